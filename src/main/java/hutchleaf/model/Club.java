package hutchleaf.model;

import hutchleaf.problem.Place;
import hutchleaf.sheet.Correction;
import hutchleaf.sheet.Paper;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A club as its {@code club.md} describes it.
 *
 * @param letter what the leader writes to every member
 */
public record Club(String name, Show show, Practice practice, Print print, List<Block> letter, Place at) {
    /**
     * The show that the packets lead to.
     *
     * @param ruleSet one of {@code contest/divisions.md}
     * @param countedOn the day on which ages are counted
     * @param leaveOut figures, by path from the content root, that the club does not print
     */
    public record Show(String name, LocalDate date, String ruleSet, LocalDate countedOn, Set<String> leaveOut) {
        public Show {
            leaveOut = Set.copyOf(leaveOut);
        }
    }

    /**
     * How members practise.
     *
     * @param start the first day of study; empty means today
     * @param restDays days of the week without study
     * @param minutes a day with the cards
     * @param grip how this club's leader teaches the hold of the head; empty where the routine's own words serve
     */
    public record Practice(Optional<LocalDate> start, Set<DayOfWeek> restDays, int minutes, String grip) {
        public Practice {
            restDays = Set.copyOf(restDays);
        }
    }

    /**
     * On what the club prints, what a sheet costs, and how words and weights are written.
     *
     * @param weights the unit of the breeds' limits and the rabbits' own weights
     * @param saver whether pages are printed with less ink
     */
    public record Print(
            Paper paper,
            Price plain,
            Price card,
            Spelling spelling,
            WeightUnit weights,
            Printer printer,
            Saver saver) {}

    /**
     * What the club's printer does to a page.
     *
     * @param at where the leader wrote it down; the file where nothing is written
     */
    public record Printer(Correction correction, Place at) {}

    /** Whether black grounds and drawings become outlines, to save ink. */
    public enum Saver {
        NO,
        YES
    }

    /**
     * What a sheet costs.
     *
     * @param currency a sign or a code that stands before the amount; may be empty
     */
    public record Price(String currency, BigDecimal amount) {}

    /** Whose spelling is printed. */
    public enum Spelling {
        UK,
        US
    }

    public Club {
        letter = List.copyOf(letter);
    }
}
