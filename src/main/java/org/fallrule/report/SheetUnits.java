package org.fallrule.report;

import java.math.BigDecimal;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.network.Station;
import org.fallrule.site.Site;

/** The units of a sheet for the field: of a grade sheet, of a long section. */
public enum SheetUnits {
    FEET(Unit.FOOT, Unit.ELEVATION_FOOT) {
        @Override
        public String station(double metres) {
            return new Station(metres).toString();
        }

        @Override
        public String size(Length diameter) {
            return Printed.trimmed(Math.round(diameter.in(Unit.INCH) * 100) / 100.0) + " in";
        }

        @Override
        public String depth(Length depth) {
            return Printed.trimmed(Math.round(depth.in(Unit.INCH) * 10) / 10.0) + " in";
        }

        @Override
        public String level(Slope slope) {
            return Sixteenths.of(Length.feet(2 * slope.ratio())) + " over 2 ft, "
                    + Sixteenths.of(Length.feet(4 * slope.ratio())) + " over 4 ft of level, to the nearest 1/16 in";
        }
    },
    METRES(Unit.METRE, Unit.ELEVATION_METRE) {
        @Override
        public String station(double metres) {
            return number(new Length(Math.max(0, metres)));
        }

        @Override
        public String size(Length diameter) {
            return Printed.of(diameter, Unit.MILLIMETRE);
        }

        @Override
        public String depth(Length depth) {
            return withUnit(depth);
        }

        @Override
        public String level(Slope slope) {
            return Math.round(600 * Math.abs(slope.ratio())) + " mm over 600 mm, "
                    + Math.round(1200 * Math.abs(slope.ratio())) + " mm over 1200 mm of level, to the nearest mm";
        }
    };

    /** The units of a plan whose heights are in metres, or of one whose heights are in feet. */
    public static SheetUnits of(Site site) {
        return site.metric() ? METRES : FEET;
    }

    private final Unit length;
    private final Unit height;

    SheetUnits(Unit length, Unit height) {
        this.length = length;
        this.height = height;
    }

    /** Metres in the unit of lengths and heights. */
    public double metres() {
        return length.toSi();
    }

    /** The sign of the unit. */
    public String symbol() {
        return length.symbol();
    }

    /** {@code feet}. */
    public String word() {
        return this == FEET ? "feet" : "metres";
    }

    /** A station as the crew reads it. */
    public abstract String station(double metres);

    /** A nominal diameter, with its unit. */
    public abstract String size(Length diameter);

    /** The depth of a utility, with its unit. */
    public abstract String depth(Length depth);

    /** What a level shows on a pipe of this slope. */
    public abstract String level(Slope slope);

    public String withUnit(Length value) {
        return Printed.of(value, length);
    }

    /** The number alone. */
    public String number(Length value) {
        return bare(Printed.of(value, length));
    }

    /** The number alone. */
    public String number(Elevation value) {
        return bare(Printed.of(value, height));
    }

    /**
     * The fall between two inverts as the difference of what is printed of them, so that the column adds up on paper too.
     */
    public String fall(Elevation from, Elevation to) {
        return new BigDecimal(number(from)).subtract(new BigDecimal(number(to))).toPlainString();
    }

    private static String bare(String printed) {
        return printed.substring(0, printed.lastIndexOf(' '));
    }
}
