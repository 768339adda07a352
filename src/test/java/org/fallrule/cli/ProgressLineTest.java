package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;
import org.fallrule.docket.DocketRun;
import org.junit.jupiter.api.Test;

class ProgressLineTest {
    private final AtomicLong clock = new AtomicLong();
    private final StringWriter screen = new StringWriter();

    private ProgressLine line(boolean terminal) {
        return new ProgressLine(new PrintWriter(screen, true), terminal, clock::get);
    }

    private void seconds(double seconds) {
        clock.addAndGet((long) (seconds * 1e9));
    }

    @Test
    void itSaysSitesDoneFailingSoFarAndTimeLeft() {
        ProgressLine line = line(true);
        seconds(10);
        line.show(new DocketRun.Progress(1000, 0, 70, 3, 4000));

        assertThat(screen.toString())
                .isEqualTo("\r\u001B[K1,000 of 4,000 sites, 70 failing, 3 not checked, about 30 s left");
    }

    @Test
    void sitesTakenOverDoNotCountForTheTimeLeft() {
        ProgressLine line = line(true);
        seconds(60);
        line.show(new DocketRun.Progress(600, 500, 0, 0, 1000));

        assertThat(screen.toString()).endsWith("600 of 1,000 sites, 0 failing, about 4 min left");
    }

    @Test
    void itIsWrittenOverAtMostFiveTimesASecondAndTakenAwayForOtherLines() {
        ProgressLine line = line(true);
        line.show(new DocketRun.Progress(1, 1, 0, 0, 9));
        seconds(0.1);
        line.show(new DocketRun.Progress(2, 2, 0, 0, 9));
        line.clear();
        line.clear();

        assertThat(screen.toString()).isEqualTo("\r\u001B[K1 of 9 sites, 0 failing\r\u001B[K");
    }

    @Test
    void whereThereIsNoTerminalNothingIsPrinted() {
        ProgressLine line = line(false);
        seconds(10);
        line.show(new DocketRun.Progress(1, 0, 0, 0, 9));
        line.clear();

        assertThat(screen.toString()).isEmpty();
    }
}
