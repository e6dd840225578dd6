package hutchleaf;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import hutchleaf.page.Manuscript;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules of the house: which package knows which, who owns what, and what stands where. */
final class HouseTest {
    private static final Path MAIN = Path.of("src/main/java/hutchleaf");
    private static final int MOST_LINES = 250;

    /** Each package with the packages of ours that it may use. */
    private static final Map<String, Set<String>> MAY_USE = Map.ofEntries(
            Map.entry("problem", Set.of()),
            Map.entry("sheet", Set.of("problem")),
            Map.entry("model", Set.of("problem", "sheet")),
            Map.entry("content", Set.of("problem", "sheet", "model")),
            Map.entry("club", Set.of("problem", "sheet", "model", "content")),
            Map.entry("rabbit", Set.of("problem", "model")),
            Map.entry("study", Set.of("problem", "model")),
            Map.entry("edition", Set.of("problem", "sheet", "model", "rabbit", "study")),
            Map.entry("contest", Set.of("problem", "sheet", "model", "edition")),
            Map.entry("page", Set.of("problem", "sheet", "model", "rabbit", "study", "edition", "contest")),
            Map.entry("press", Set.of("problem", "sheet", "page")),
            Map.entry("proof", Set.of("problem", "sheet", "model", "edition", "contest")),
            Map.entry(
                    "cli",
                    Set.of(
                            "problem", "sheet", "model", "content", "club", "rabbit", "study", "edition", "contest",
                            "page", "press", "proof")));

    /** Each library with the one package that may know it. */
    private static final Map<String, String> OWNERS = Map.ofEntries(
            Map.entry("org.commonmark..", "content"),
            Map.entry("freemarker..", "page"),
            Map.entry("com.openhtmltopdf..", "press"),
            Map.entry("org.apache.pdfbox..", "press"),
            Map.entry("org.apache.xmpbox..", "press"),
            Map.entry("org.apache.fontbox..", "press"),
            Map.entry("com.github.weisj..", "press"),
            Map.entry("picocli..", "cli"),
            Map.entry("com.fasterxml.jackson..", "cli"),
            Map.entry("org.apache.commons.csv..", "club"),
            Map.entry("org.apache.commons.text..", "problem"));

    private static final Set<String> TOP =
            Set.of("README.md", "DEVELOPERS.md", "pom.xml", "src", "content", "templates", "out", "tests");

    /** Not there in every checkout: the first two are written last, out/ may be empty. */
    private static final Set<String> MAY_LACK = Set.of("README.md", "DEVELOPERS.md", "out");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("hutchleaf");

    static Stream<String> packages() throws IOException {
        try (Stream<Path> folders = Files.list(MAIN)) {
            return folders
                    .filter(Files::isDirectory)
                    .map(folder -> folder.getFileName().toString())
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    static Stream<String> libraries() {
        return OWNERS.keySet().stream().sorted();
    }

    @Test
    void everyPackageStandsInTheTable() throws IOException {
        assertThat(packages()).containsExactlyInAnyOrderElementsOf(MAY_USE.keySet());
    }

    @ParameterizedTest
    @MethodSource("packages")
    void aPackageUsesOnlyWhatTheTableAllows(String name) {
        String[] refused = MAY_USE.keySet().stream()
                .filter(other -> !other.equals(name))
                .filter(other -> !MAY_USE.getOrDefault(name, Set.of()).contains(other))
                .map(other -> "hutchleaf." + other + "..")
                .toArray(String[]::new);
        noClasses()
                .that(resideInAPackage("hutchleaf." + name + ".."))
                .should()
                .dependOnClassesThat(resideInAnyPackage(refused))
                .because(name + " may use only " + MAY_USE.get(name))
                .allowEmptyShould(false)
                .check(CLASSES);
    }

    @Test
    void thePressKnowsNoMoreOfAPageThanItsManuscript() {
        noClasses()
                .that()
                .resideInAPackage("hutchleaf.press..")
                .should()
                .dependOnClassesThat(resideInAPackage("hutchleaf.page..")
                        .and(describe("are not Manuscript", used -> !used.isEquivalentTo(Manuscript.class))))
                .check(CLASSES);
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void aLibraryIsKnownToOnePackage(String library) {
        noClasses()
                .that()
                .resideOutsideOfPackage("hutchleaf." + OWNERS.get(library) + "..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .check(CLASSES);
    }

    @ParameterizedTest
    @MethodSource("packages")
    void everyPackageIsNullMarkedAndSaysWhatItIsFor(String name) throws IOException {
        assertThat(MAIN.resolve(name).resolve("package-info.java"))
                .content()
                .startsWith("/** ")
                .contains("@NullMarked\npackage hutchleaf." + name + ";");
    }

    @Test
    void noSourceIsLongerThanAReaderCanHold() throws IOException {
        Set<String> tooLong = new TreeSet<>();
        try (Stream<Path> sources = Files.walk(MAIN)) {
            for (Path source :
                    sources.filter(file -> file.toString().endsWith(".java")).toList()) {
                if (Files.readAllLines(source).size() > MOST_LINES) {
                    tooLong.add(MAIN.relativize(source).toString().replace('\\', '/'));
                }
            }
        }
        assertThat(tooLong).as("longer than " + MOST_LINES + " lines").isEmpty();
    }

    @Test
    void nobodySetsTheMachinesLocaleOrZone() {
        noClasses()
                .should()
                .callMethod(Locale.class, "setDefault", Locale.class)
                .check(CLASSES);
        noClasses()
                .should()
                .callMethod(Locale.class, "setDefault", Locale.Category.class, Locale.class)
                .check(CLASSES);
        noClasses()
                .should()
                .callMethod(TimeZone.class, "setDefault", TimeZone.class)
                .check(CLASSES);
    }

    @Test
    void nobodyOutsideTheCommandsAsksForTheTime() {
        for (Class<?> clock : List.of(Instant.class, LocalDate.class, LocalDateTime.class, ZonedDateTime.class)) {
            noClasses()
                    .that()
                    .resideOutsideOfPackage("hutchleaf.cli..")
                    .should()
                    .callMethod(clock, "now")
                    .check(CLASSES);
        }
        noClasses()
                .that()
                .resideOutsideOfPackage("hutchleaf.cli..")
                .should()
                .dependOnClassesThat()
                .areAssignableTo(Clock.class)
                .orShould()
                .callConstructor(Date.class)
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .check(CLASSES);
    }

    @Test
    void theTopOfTheProjectHoldsWhatItShouldAndNothingElse() throws IOException {
        Set<String> found = new TreeSet<>();
        try (Stream<Path> top = Files.list(Path.of(""))) {
            top.map(path -> path.getFileName().toString())
                    .filter(name -> !name.startsWith(".") && !name.equals("target"))
                    .forEach(found::add);
        }
        Set<String> lacking = new TreeSet<>(TOP);
        lacking.removeAll(MAY_LACK);
        assertThat(TOP)
                .as("all that may stand there: " + TOP.stream().sorted().collect(joining(", ")))
                .containsAll(found);
        assertThat(found).containsAll(lacking);
    }
}
