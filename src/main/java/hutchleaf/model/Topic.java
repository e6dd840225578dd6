package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;
import java.util.Optional;

/** One file of the content tree: what it is, and what it holds. */
public record Topic(Head head, List<Section> sections, Practice practice) {
    /**
     * What a topic is.
     *
     * @param path from the content root, for example {@code health/sore-hocks.md}
     * @param station the stop it belongs to, 1 to 16
     * @param code the group of its cards: its stop, or a fixed number from 21 up
     */
    public record Head(String path, String title, Levels levels, Optional<Integer> station, int code, Credits credits) {
        public Subject subject() {
            String folder = path.substring(0, path.indexOf('/'));
            return Subject.of(folder).orElseThrow(() -> new IllegalStateException("no subject in " + path));
        }

        /** Where links and page numbers point: the path without its ending, {@code health-sore-hocks}. */
        public String anchor() {
            return path.replace('/', '-').replaceAll("\\.md$", "");
        }
    }

    /**
     * What a topic stands on.
     *
     * @param sources ids of {@code sources.md}
     * @param breed the one breed it speaks of, when it does
     */
    public record Credits(Place at, List<String> sources, Optional<String> breed) {
        public Credits {
            sources = List.copyOf(sources);
        }
    }

    /** What a member learns with: words, cards, a judge's questions and the self-test. */
    public record Practice(
            List<Term> terms, List<Card> cards, List<JudgeQuestion> questions, List<SelfTestItem> selfTest) {
        public Practice {
            terms = List.copyOf(terms);
            cards = List.copyOf(cards);
            questions = List.copyOf(questions);
            selfTest = List.copyOf(selfTest);
        }
    }

    public Topic {
        sections = List.copyOf(sections);
    }
}
