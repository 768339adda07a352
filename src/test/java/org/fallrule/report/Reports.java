package org.fallrule.report;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Weight;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Written;
import org.fallrule.reader.SiteReader;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** Reports to print. */
public final class Reports {
    private Reports() {}

    /** The report of a folder of sample-sites. */
    public static Report of(String sample) {
        return of(SiteReader.read(Path.of("sample-sites", sample)));
    }

    public static Report of(Site site) {
        RuleBook book = rules(site.county().orElse("saltmeadow"));
        SiteAnalysis analysis = SiteAnalysis.of(site);
        Review review = Reviewer.review(analysis, book, LocalDate.of(2026, 6, 1));
        return new Report(analysis, site.county().orElse("saltmeadow"), book, review);
    }

    /** The report of plumb-line-1 with other findings and problems in it. */
    public static Report with(List<Finding> findings, Fault... problems) {
        Report plain = of("plumb-line-1");
        return new Report(plain.analysis(), plain.county(), plain.book(), new Review(findings, List.of(problems)));
    }

    private static RuleBook rules(String county) {
        return new RuleLibrary(Path.of("rules"), "rules").load(county, Optional.empty());
    }

    public static Finding finding(Weight weight, Observation observation) {
        Place place = Place.of("rules/baseline.yaml").at(12, 5);
        Basis basis = new Basis(
                Basis.Kind.PRACTICE, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), place);
        return new Finding("some-rule", "Some rule", "clearance", weight, basis, place, observation);
    }

    /** A finding of a distance in feet that is held against 5 ft. */
    public static Observation distance(Feature subject, double feet, double accuracyFeet) {
        return Observation.measured(
                subject,
                new Measured(
                        "plan distance",
                        new Length(feet * 0.3048),
                        accuracyFeet * 0.3048,
                        Optional.of(new Limit(Bound.AT_LEAST, Written.parse("5 ft", Dimension.LENGTH))),
                        Optional.empty()));
    }

    public static Feature feature(Role role, String id, String wkt) {
        return new Feature(
                role,
                id,
                geometry(wkt),
                Attributes.none().with(Attribute.ID, id),
                Place.of("a.shp").feature("feature 1"));
    }

    public static Geometry geometry(String wkt) {
        try {
            return new WKTReader().read(wkt);
        } catch (ParseException e) {
            throw new IllegalArgumentException(wkt, e);
        }
    }
}
