package hutchleaf.proof;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Leaf;
import hutchleaf.edition.Stop;
import hutchleaf.model.Card;
import hutchleaf.model.Level;
import hutchleaf.model.Section.Kind;
import hutchleaf.model.Subject;
import hutchleaf.problem.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Counts what each stop and each subject has for each level, and finds the holes that a member would fall into. */
final class CoverageCheck implements Check {
    static Coverage count(List<Edition> editions) {
        List<Coverage.StopRow> stops = new ArrayList<>();
        List<Coverage.SubjectRow> subjects = new ArrayList<>();
        for (Edition edition : editions) {
            edition.stops().forEach(stop -> stops.add(row(edition.level(), stop)));
            for (Subject subject : Subject.values()) {
                subjects.add(row(edition, subject));
            }
        }
        return new Coverage(stops, subjects);
    }

    private static Coverage.StopRow row(Level level, Stop stop) {
        Leaf leaf = stop.leaf();
        Coverage.Texts texts = new Coverage.Texts(
                leaf.section(Kind.IN_SHORT).isPresent(),
                leaf.section(Kind.STEPS).isPresent(),
                leaf.section(Kind.CAUTION).isPresent(),
                leaf.section(Kind.SAY_IT).isPresent(),
                leaf.section(Kind.IF_YOU_FIND_IT).isPresent());
        return new Coverage.StopRow(
                level,
                stop.station().no(),
                stop.station().shortName(),
                texts,
                practice(List.of(leaf)),
                stop.scored().isPresent());
    }

    private static Coverage.SubjectRow row(Edition edition, Subject subject) {
        List<Leaf> leaves =
                edition.all().filter(leaf -> leaf.head().subject() == subject).toList();
        int terms =
                leaves.stream().mapToInt(leaf -> leaf.practice().terms().size()).sum();
        return new Coverage.SubjectRow(edition.level(), subject, leaves.size(), terms, practice(leaves));
    }

    private static Coverage.Practice practice(List<Leaf> leaves) {
        List<Card> cards = leaves.stream()
                .flatMap(leaf -> leaf.practice().cards().stream())
                .toList();
        int core = (int)
                cards.stream().filter(card -> card.need() == Card.Need.CORE).count();
        int questions = leaves.stream()
                .mapToInt(leaf -> leaf.practice().questions().size())
                .sum();
        return new Coverage.Practice(cards.size(), core, questions);
    }

    @Override
    public void check(Material material, Findings findings) {
        for (Edition edition : material.editions()) {
            for (Stop stop : edition.stops()) {
                holes(row(edition.level(), stop))
                        .forEach((what, mend) -> findings.error(
                                Rule.COVERAGE_STOP,
                                stop.leaf().head().credits().at(),
                                edition.level(),
                                "stop " + stop.station().no() + " has no " + what + " for " + Findings.LEVELS,
                                mend));
            }
            for (Subject subject : Subject.values()) {
                subject(row(edition, subject), Place.whole(Roots.of(material.library()) + subject.folder()), findings);
            }
        }
    }

    /** Stop order: the texts first, then what is learned with; only holes are listed. */
    private static Map<String, String> holes(Coverage.StopRow row) {
        Map<String, String> holes = new LinkedHashMap<>();
        text(holes, row.texts().inShort(), Kind.IN_SHORT);
        text(holes, row.texts().steps(), Kind.STEPS);
        text(holes, row.texts().caution(), Kind.CAUTION);
        text(holes, row.texts().sayIt(), Kind.SAY_IT);
        text(holes, row.texts().ifYouFindIt(), Kind.IF_YOU_FIND_IT);
        if (row.practice().cards() == 0) {
            holes.put("card", "add one under ## Cards");
        } else if (row.practice().core() == 0) {
            holes.put("core card", "mark the card that is needed first: {code core}");
        }
        if (row.practice().questions() == 0) {
            holes.put("question a judge may ask", "add one under ## Judge may ask");
        }
        if (!row.scored() && row.level() != Level.PRIMARY) {
            holes.put("place in the score sheet", "name the stop in contest/scoresheet.md");
        }
        return holes;
    }

    private static void text(Map<String, String> holes, boolean there, Kind kind) {
        if (!there) {
            holes.put("'" + kind.heading() + "'", "add ## " + kind.heading() + " for it");
        }
    }

    private static void subject(Coverage.SubjectRow row, Place at, Findings findings) {
        if (row.topics() == 0) {
            findings.error(
                    Rule.COVERAGE_SUBJECT,
                    at,
                    row.level(),
                    "no topic on this subject for " + Findings.LEVELS,
                    "add one that starts at this level");
        } else if (row.practice().cards() == 0) {
            findings.error(
                    Rule.COVERAGE_SUBJECT,
                    at,
                    row.level(),
                    "no card on this subject for " + Findings.LEVELS,
                    "add one to a topic");
        }
    }
}
