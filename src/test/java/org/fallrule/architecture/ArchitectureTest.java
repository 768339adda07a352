package org.fallrule.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fallrule.check.Check;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** How the packages hang together: imports point one way, each library is known to one package, only cli prints. */
class ArchitectureTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.fallrule");

    /** The packages in the order of the data's way; each may import those before it. */
    private static final List<String> WAY = List.of(
            "document",
            "measure",
            "method",
            "filter",
            "locality",
            "site",
            "reader",
            "intake",
            "terrain",
            "network",
            "hydrology",
            "hydraulics",
            "analysis",
            "finding",
            "check",
            "rulebook",
            "review",
            "comparison",
            "remedy",
            "proposal",
            "report",
            "bookshelf",
            "reference",
            "docket",
            "cli");

    /** The one package that knows a library. JTS, the vocabulary of geometry, and annotations are free. */
    private static final Map<String, String> LIBRARIES = Map.ofEntries(
            Map.entry("com.fasterxml.jackson", "org.fallrule.document"),
            Map.entry("org.yaml", "org.fallrule.document"),
            Map.entry("org.geotools.filter", "org.fallrule.filter"),
            Map.entry("org.geotools.api.filter", "org.fallrule.filter"),
            Map.entry("org.geotools.referencing", "org.fallrule.reader.frame"),
            Map.entry("org.geotools.api.referencing", "org.fallrule.reader.frame"),
            Map.entry("org.geotools.geometry", "org.fallrule.report.map"),
            Map.entry("it.geosolutions.imageioimpl", "org.fallrule.reader.raster"),
            Map.entry("org.sqlite", "org.fallrule.reader.geopackage"),
            Map.entry("java.sql", "org.fallrule.reader.geopackage"),
            Map.entry("javax.imageio", "org.fallrule.reader.raster"),
            Map.entry("org.tinfour", "org.fallrule.terrain"),
            Map.entry("gg.jte", "org.fallrule.report.html"),
            Map.entry("org.apache.pdfbox", "org.fallrule.report.pdf"),
            Map.entry("org.apache.fontbox", "org.fallrule.report.pdf"),
            Map.entry("picocli", "org.fallrule.cli"));

    @TestFactory
    Stream<DynamicTest> importsPointOneWay() {
        return Stream.iterate(0, i -> i < WAY.size(), i -> i + 1)
                .map(i -> DynamicTest.dynamicTest(
                        WAY.get(i) + " imports nothing that comes after it",
                        () -> noClasses()
                                .that()
                                .resideInAPackage("org.fallrule." + WAY.get(i) + "..")
                                .should()
                                .dependOnClassesThat()
                                .resideInAnyPackage(WAY.subList(i + 1, WAY.size()).stream()
                                        .map(name -> "org.fallrule." + name + "..")
                                        .toArray(String[]::new))
                                .allowEmptyShould(true)
                                .check(CLASSES)));
    }

    @Test
    void everyClassLivesInAPackageOfTheWay() {
        classes()
                .should()
                .resideInAnyPackage(
                        WAY.stream().map(name -> "org.fallrule." + name + "..").toArray(String[]::new))
                .check(CLASSES);
    }

    @Test
    void noPackagesDependOnEachOtherInACircle() {
        slices().matching("org.fallrule.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @TestFactory
    Stream<DynamicTest> eachLibraryIsKnownToOnePackage() {
        return LIBRARIES.entrySet().stream()
                .map(library -> DynamicTest.dynamicTest(
                        library.getKey() + " is known only to " + library.getValue(),
                        () -> noClasses()
                                .that()
                                .resideOutsideOfPackage(library.getValue() + "..")
                                .should()
                                .dependOnClassesThat()
                                .resideInAPackage(library.getKey() + "..")
                                .check(CLASSES)));
    }

    @Test
    void everyLibraryIsAccountedFor() {
        classes()
                .should()
                .onlyDependOnClassesThat(DescribedPredicate.describe(
                        "are ours, the platform's, JTS, annotations or of a library in the list",
                        ArchitectureTest::isAccountedFor))
                .check(CLASSES);
    }

    private static boolean isAccountedFor(JavaClass type) {
        String name = type.getBaseComponentType().getFullName();
        return type.getBaseComponentType().isPrimitive()
                || Stream.concat(
                                LIBRARIES.keySet().stream(),
                                Stream.of(
                                        "java",
                                        "org.fallrule",
                                        "org.locationtech.jts",
                                        "org.jspecify",
                                        "com.google.auto.service",
                                        // the root of GeoTools' exceptions and its measure of units
                                        "org.geotools",
                                        "javax.measure",
                                        "tech.units",
                                        "si.uom"))
                        .anyMatch(prefix -> name.startsWith(prefix + "."));
    }

    @Test
    void onlyCliPrints() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.fallrule.cli..")
                .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS)
                .check(CLASSES);
    }

    /** No entities from outside, no connection, no program started, no class made from what a file says. */
    @Test
    void nothingParsesXmlConnectsStartsOrDeserializes() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "javax.xml..",
                        "org.xml..",
                        "org.w3c..",
                        "java.net.http..",
                        "javax.script..",
                        "javax.naming..",
                        "java.rmi..")
                .orShould()
                .dependOnClassesThat()
                .belongToAnyOf(
                        java.net.Socket.class,
                        java.net.URLConnection.class,
                        ProcessBuilder.class,
                        java.io.ObjectInputStream.class)
                .orShould()
                .callMethodWhere(DescribedPredicate.describe(
                        "start a program",
                        call -> call.getTargetOwner().isEquivalentTo(Runtime.class)
                                && call.getName().equals("exec")))
                .check(CLASSES);
    }

    @Test
    void noCheckKnowsAnother() {
        noClasses()
                .that()
                .implement(Check.class)
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "are other checks", type -> type.isAssignableTo(Check.class) && !type.isInterface()))
                .because("a check stands alone; what two need is a term of the trade with a class of its own")
                .check(CLASSES);
    }

    @Test
    void noPackageIsADrawerForEverything() {
        noClasses()
                .should()
                .resideInAnyPackage(
                        "..util..", "..utils..", "..common..", "..core..", "..helper..", "..manager..", "..impl..")
                .check(CLASSES);
    }
}
