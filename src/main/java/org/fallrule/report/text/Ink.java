package org.fallrule.report.text;

import org.fallrule.finding.Outcome;

/** How an outcome's words are set off on a terminal. The words themselves always say the outcome. */
public enum Ink {
    PLAIN {
        @Override
        String of(Outcome outcome, String words) {
            return words;
        }
    },
    /** ECMA-48 colours (SGR), the ones that colour-blind readers tell apart best. */
    COLOUR {
        @Override
        String of(Outcome outcome, String words) {
            String code = switch (outcome) {
                case FAILS -> "1;31";
                case BORDERLINE, CANNOT_TELL -> "1;33";
                case MEETS -> "1;36";
                case NOT_APPLICABLE, WAIVED -> "1";
            };
            return "\u001b[" + code + "m" + words + "\u001b[0m";
        }
    };

    abstract String of(Outcome outcome, String words);
}
