package org.fallrule.cli;

/** The command line. */
public final class Fallrule {
    private Fallrule() {}

    public static void main(String[] args) {
        System.exit(2);
    }
}
