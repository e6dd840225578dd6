package hutchleaf.model;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The folders of the content tree that hold topics, in the order in which a guide prints them. */
public enum Subject {
    ROUTINE("The routine"),
    ANATOMY("Parts of the rabbit"),
    BODY_TYPES("Body types"),
    FUR_TYPES("Fur types"),
    COLOURS("Colours"),
    BREEDS("Breeds"),
    HEALTH("Health"),
    HANDLING("Handling"),
    HUSBANDRY("Care"),
    CONTEST("Show day");

    private final String title;

    Subject(String title) {
        this.title = title;
    }

    /** As a page shows it. */
    public String title() {
        return title;
    }

    /** The folder's name. */
    public String folder() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Subject> of(String folder) {
        return Arrays.stream(values())
                .filter(subject -> subject.folder().equals(folder))
                .findFirst();
    }

    public static List<String> folders() {
        return Arrays.stream(values()).map(Subject::folder).toList();
    }
}
