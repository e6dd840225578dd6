package hutchleaf.club;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The columns of a roster, each with other names that spreadsheets give it. */
enum Column {
    MEMBER_NAME("name", "member", "exhibitor", "exhibitor name", "full name", "youth name", "child", "child name"),
    BIRTH_DATE("birthdate", "birthday", "born", "date of birth", "dob", "member birth date", "member dob"),
    GRADE("school grade", "member grade"),
    YEARS_IN_CLUB("years", "years in the club", "club years", "year in club"),
    FIRST_YEAR_WITH_RABBITS("first year", "first rabbit year", "first year rabbits"),
    STUDY_LEVEL("level", "studies", "study"),
    SETTING("print setting", "print size", "type size", "print"),
    ACCOMMODATION("accommodations", "accommodation at the show"),
    RABBIT_NAME("rabbit", "name of rabbit", "rabbits name", "animal name"),
    BREED("rabbit breed", "breed name"),
    COLOUR("color", "rabbit colour", "rabbit color", "variety", "colour variety", "color variety"),
    SEX("gender", "rabbit sex", "buck or doe"),
    RABBIT_BIRTH_DATE(
            "rabbit birthdate",
            "rabbit birthday",
            "rabbit born",
            "rabbit dob",
            "rabbit date of birth",
            "date of birth of rabbit"),
    EAR_NUMBER("ear", "ear no", "ear nr", "ear tattoo", "ear tag", "tattoo", "tattoo number", "tattoo no"),
    WEIGHT_LB(
            "weight lbs", "weight in lb", "weight in lbs", "weight in pounds", "weight pounds", "lb", "lbs", "pounds"),
    WEIGHT_KG("weight kgs", "weight in kg", "weight in kilograms", "weight kilograms", "kg", "kilograms"),
    /** Each cell names its unit. */
    WEIGHT("rabbit weight");

    private final List<String> others;

    Column(String... others) {
        this.others = List.of(others);
    }

    /** As messages and the demo write it: {@code member_name}. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Small or large letters, spaces, underscores and other signs make no difference. */
    static Optional<Column> of(String head) {
        String letters = letters(head);
        return Arrays.stream(values())
                .filter(column -> letters.equals(letters(column.name()))
                        || column.others.stream().anyMatch(other -> letters.equals(letters(other))))
                .findFirst();
    }

    static List<String> words() {
        return Arrays.stream(values()).map(Column::word).toList();
    }

    private static String letters(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
