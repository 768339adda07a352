package org.fallrule.report.pdf;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads path data as SVG writes them (SVG 1.1, 8.3), as far as drawings use them: straight lines. */
final class PathData {
    private static final Pattern PIECE = Pattern.compile("[MLHVZhvl]|-?[0-9.]+");

    /** What follows the path. */
    interface Pen {
        void move(double x, double y);

        void line(double x, double y);

        void close();
    }

    private final Deque<String> pieces = new ArrayDeque<>();
    private final Pen pen;
    private double x;
    private double y;

    private PathData(String data, Pen pen) {
        this.pen = pen;
        Matcher matcher = PIECE.matcher(data);
        while (matcher.find()) {
            pieces.add(matcher.group());
        }
    }

    static void follow(String data, Pen pen) {
        PathData path = new PathData(data, pen);
        char command = 'M';
        while (!path.pieces.isEmpty()) {
            if (Character.isLetter(path.pieces.element().charAt(0))) {
                command = path.pieces.remove().charAt(0);
            }
            path.step(command);
            command = command == 'M' ? 'L' : command;
        }
    }

    private void step(char command) {
        switch (command) {
            case 'M' -> {
                to(number(), number());
                pen.move(x, y);
            }
            case 'L' -> lineTo(number(), number());
            case 'l' -> lineTo(x + number(), y + number());
            case 'H' -> lineTo(number(), y);
            case 'h' -> lineTo(x + number(), y);
            case 'V' -> lineTo(x, number());
            case 'v' -> lineTo(x, y + number());
            default -> pen.close();
        }
    }

    private double number() {
        return Double.parseDouble(pieces.remove());
    }

    private void to(double newX, double newY) {
        x = newX;
        y = newY;
    }

    private void lineTo(double newX, double newY) {
        to(newX, newY);
        pen.line(x, y);
    }
}
