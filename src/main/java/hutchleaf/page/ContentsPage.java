package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.model.Subject;
import hutchleaf.page.GuideView.Chapter;
import hutchleaf.page.GuideView.Entry;
import java.util.ArrayList;
import java.util.List;

/** The list of contents of a guide, in the order in which its pages stand. */
final class ContentsPage {
    private ContentsPage() {}

    static List<Chapter> of(Edition edition, boolean sources) {
        List<Chapter> chapters = new ArrayList<>();
        chapters.add(new Chapter(
                "Start here",
                List.of(
                        new Entry("how-to-use", "How to use this guide", 0),
                        new Entry("safety", "Safe rabbit, safe you", 0),
                        new Entry("routine", "The routine on one page", 0)),
                false));
        chapters.add(new Chapter(
                edition.stops().size() + " stops",
                edition.stops().stream()
                        .map(stop -> new Entry(
                                stop.leaf().head().anchor(),
                                stop.station().name(),
                                stop.station().no()))
                        .toList(),
                true));
        for (Subject subject : Subject.values()) {
            List<Entry> entries = GuidePages.printed(edition, subject).stream()
                    .map(leaf -> new Entry(leaf.head().anchor(), leaf.head().title(), 0))
                    .toList();
            if (!entries.isEmpty()) {
                chapters.add(new Chapter(subject.title(), entries, false));
            }
        }
        List<Entry> back = new ArrayList<>(List.of(
                new Entry("asked", "What a judge may ask", 0),
                new Entry("self-test", "Self-test", 0),
                new Entry("answers", "Answers", 0),
                new Entry("words", "Words to know, A to Z", 0)));
        if (sources) {
            back.add(new Entry("sources", "Where the facts come from", 0));
        }
        chapters.add(new Chapter("Check yourself", back, false));
        return chapters;
    }
}
