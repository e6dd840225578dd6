package hutchleaf.rabbit;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.edition.Edition;
import hutchleaf.model.Block;
import hutchleaf.model.Level;
import hutchleaf.model.Levels;
import hutchleaf.model.Library;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Section;
import hutchleaf.model.Sex;
import hutchleaf.model.Topic;
import hutchleaf.model.Words;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import hutchleaf.proof.Finding;
import hutchleaf.proof.Findings;
import hutchleaf.proof.Proof;
import hutchleaf.proof.Rule;
import hutchleaf.proof.Spelling;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is printed of a rabbit passes the proofreader that reads the content. */
final class ProofreadTest {
    private static final String FILE = "members.csv";

    /** Weights, ages and class limits are sums of this rabbit; a packet's words have no topic to cite and no twin to fear. */
    private static final Set<Rule> NOT_HERE =
            EnumSet.of(Rule.TRUTH_NUMBER, Rule.SOURCE_NONE, Rule.CARD_TWIN, Rule.CARD_CORE, Rule.READING_TOPIC);

    @ParameterizedTest
    @EnumSource
    void theProofreaderFindsNothingInTheWordsOfARabbit(Level level) {
        List<Topic> topics = new ArrayList<>(Samples.LIBRARY.topics());
        for (Rabbit rabbit : rabbits()) {
            topics.add(topic(rabbit, level, topics.size()));
        }
        Library all = new Library(
                topics,
                Samples.LIBRARY.routine(),
                Samples.LIBRARY.contest(),
                Samples.LIBRARY.tables(),
                Samples.LIBRARY.wording());
        Findings findings = new Findings();
        Proof.read(
                all,
                List.of(Edition.of(all, level, new Problems())),
                new Proof.Settings(Spelling.UK, Optional.empty(), Optional.empty()),
                findings);

        assertThat(findings.sorted().stream()
                        .filter(finding -> finding.problem().place().file().equals(FILE))
                        .filter(finding -> !NOT_HERE.contains(finding.rule()))
                        .map(Finding::toString))
                .isEmpty();
    }

    private static List<Rabbit> rabbits() {
        // "breed: Standard Chinchilla" reads like the term "breed standard".
        Stream<Rabbit> one = Samples.LIBRARY.tables().breeds().stream()
                .filter(breed -> !breed.name().equals("Standard Chinchilla"))
                .map(breed -> Samples.rabbit(breed.name(), "black", Sex.BUCK, Samples.SHOW.minusMonths(9)));
        return Stream.concat(DemoRoster.rabbits().stream(), one).toList();
    }

    private static Topic topic(Rabbit rabbit, Level level, int number) {
        hutchleaf.rabbit.Findings findings = RabbitEngine.of(rabbit, Samples.SHOW, level);
        Place at = new Place(FILE, number);
        Levels levels = new Levels(level, level);
        List<Block> said = new ArrayList<>();
        findings.lines()
                .forEach(line ->
                        said.add(new Block.Paragraph(at, Words.of(line.say().replace(" …", " so")))));
        for (Comments.Comment comment : Comments.of(findings, level)) {
            said.add(new Block.Paragraph(at, Words.of(text(comment))));
        }
        return new Topic(
                new Topic.Head(
                        "husbandry/own-" + number + ".md",
                        "Own",
                        levels,
                        Optional.empty(),
                        number + 2000,
                        new Topic.Credits(at, List.of("common practice"), Optional.empty())),
                List.of(new Section(Section.Kind.SAY_IT, "Say it", levels, at, said)),
                new Topic.Practice(
                        List.of(),
                        OwnCards.of(findings, level, Samples.LIBRARY),
                        OwnQuestions.of(findings, level),
                        List.of()));
    }

    private static String text(Comments.Comment comment) {
        return comment instanceof Comments.Build build
                ? "Praise " + build.part() + ": " + build.praise() + ". Look for: " + build.lookFor() + "."
                : ((Comments.Tick) comment).sentence();
    }
}
