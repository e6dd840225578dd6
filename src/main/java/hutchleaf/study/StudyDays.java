package hutchleaf.study;

import hutchleaf.study.StudyPlan.Kind;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The days from the start to the show, and what each is for. */
final class StudyDays {
    /** Wednesday and Sunday part the week into halves. Our own choice. */
    private static final List<DayOfWeek> USUAL_CATCH_UP = List.of(DayOfWeek.SUNDAY, DayOfWeek.WEDNESDAY);

    /** With fewer open days in a week, two without new cards would leave too few for the new ones. */
    private static final int OPEN_FOR_TWO = 5;

    private static final int OPEN_FOR_ONE = 3;

    private final LocalDate start;
    private final LocalDate show;
    private final Set<DayOfWeek> rest;
    private final Set<DayOfWeek> catchUp;

    StudyDays(Request request) {
        this.start = request.start();
        this.show = request.show();
        this.rest = request.restDays();
        this.catchUp = request.catchUpDays() ? catchUpDays(rest) : Set.of();
    }

    /**
     * The days of the week on which nothing is new: Sunday and Wednesday, or where that is a day of rest the next open
     * day, which then takes what the day of rest pushed on. One of them with three or four open days a week, none with
     * fewer.
     */
    static Set<DayOfWeek> catchUpDays(Set<DayOfWeek> rest) {
        int open = DayOfWeek.values().length - rest.size();
        int wanted = open >= OPEN_FOR_TWO ? 2 : open >= OPEN_FOR_ONE ? 1 : 0;
        Set<DayOfWeek> chosen = EnumSet.noneOf(DayOfWeek.class);
        for (DayOfWeek usual : USUAL_CATCH_UP.subList(0, wanted)) {
            DayOfWeek day = usual;
            while (rest.contains(day) || chosen.contains(day)) {
                day = day.plus(1);
            }
            chosen.add(day);
        }
        return chosen;
    }

    /** From the start to the show, both included. */
    List<LocalDate> all() {
        return start.datesUntil(show.plusDays(1)).toList();
    }

    /** Days on which cards can be new. */
    List<LocalDate> study() {
        return start.datesUntil(show).filter(date -> kind(date) == Kind.STUDY).toList();
    }

    Kind kind(LocalDate date) {
        if (date.equals(show)) {
            return Kind.SHOW;
        }
        DayOfWeek day = date.getDayOfWeek();
        return rest.contains(day) ? Kind.REST : catchUp.contains(day) ? Kind.CATCH_UP : Kind.STUDY;
    }

    int toGo(LocalDate date) {
        return Math.toIntExact(ChronoUnit.DAYS.between(date, show));
    }

    /** That day, or the next one that is no day of rest; empty where none is left before the show. */
    Optional<LocalDate> onOrAfter(LocalDate date) {
        LocalDate day = date;
        while (day.isBefore(show)) {
            if (kind(day) != Kind.REST) {
                return Optional.of(day);
            }
            day = day.plusDays(1);
        }
        return Optional.empty();
    }
}
