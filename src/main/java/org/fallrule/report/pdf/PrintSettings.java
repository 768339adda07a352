package org.fallrule.report.pdf;

import java.time.LocalDate;

/**
 * How a report is printed.
 *
 * @param paper the paper
 * @param reviewed the day of the review, which is also the document's date
 */
public record PrintSettings(Paper paper, LocalDate reviewed) {}
