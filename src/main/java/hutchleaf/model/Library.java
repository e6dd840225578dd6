package hutchleaf.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The whole content tree, read and checked. Topics are sorted by subject and code. */
public record Library(List<Topic> topics, Routine routine, Contest contest, Tables tables, Wording wording) {
    /** What the judge's paper, the divisions and the packets are made from. */
    public record Contest(
            List<ScoreSheet> scoreSheets,
            Blueprint blueprint,
            List<DivisionRule> divisions,
            WentWell wentWell,
            PacketWords packet,
            HelpWords help) {
        public Contest {
            scoreSheets = List.copyOf(scoreSheets);
            divisions = List.copyOf(divisions);
        }

        public Optional<ScoreSheet> sheetFor(Level level) {
            return scoreSheets.stream().filter(sheet -> sheet.level() == level).findFirst();
        }
    }

    /** Rows of data: numbers and sources by id, breeds, colours; and the drawings by path. */
    public record Tables(
            Map<String, Fact> facts,
            Map<String, Source> sources,
            List<Breed> breeds,
            List<Colour> colours,
            Map<String, Drawing> drawings,
            List<LabelIt> labelIt) {
        public Tables {
            facts = inOrder(facts);
            sources = inOrder(sources);
            breeds = List.copyOf(breeds);
            colours = List.copyOf(colours);
            drawings = inOrder(drawings);
            labelIt = List.copyOf(labelIt);
        }

        /** A copy that keeps the order of the file, which messages show. */
        private static <V> Map<String, V> inOrder(Map<String, V> rows) {
            return Collections.unmodifiableMap(new LinkedHashMap<>(rows));
        }
    }

    public Library {
        topics = List.copyOf(topics);
    }

    public Optional<Topic> topic(String path) {
        return topics.stream().filter(topic -> topic.head().path().equals(path)).findFirst();
    }
}
