package hutchleaf.edition;

import hutchleaf.model.Card;
import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.model.Member;
import hutchleaf.model.Needs;
import hutchleaf.study.StudyPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that one member gets for one show.
 *
 * @param edition the library at the level the member studies
 * @param member empty for a packet that is filled in by hand
 * @param needs how it is printed, and what helps the member at the table
 * @param number the contestant's number; empty for a packet that is filled in by hand
 * @param rabbits at least one; the first is the one to show
 * @param printed the day of printing, which dates the version
 */
public record Packet(
        Club club,
        Edition edition,
        Optional<Member> member,
        Needs needs,
        Optional<Integer> number,
        List<OwnRabbit> rabbits,
        StudyPlan plan,
        LocalDate printed) {
    public Packet {
        rabbits = List.copyOf(rabbits);
    }

    /** The division the member competes in; by hand, the level of the packet. */
    public Level division() {
        return member.map(found -> found.division().level()).orElse(edition.level());
    }

    /** The cards on the member's own rabbits, in order. */
    public List<Card> ownCards() {
        return rabbits.stream().flatMap(rabbit -> rabbit.cards().stream()).toList();
    }

    /** What a blank about the member or the club prints, when it is known. */
    public Optional<String> filling(String blank) {
        return switch (blank) {
            case "club.name" -> Optional.of(club.name());
            case "member.name" -> member.map(Member::name);
            case "member.first name" -> member.map(Member::firstName);
            case "member.division" -> member.map(found -> found.division().name());
            case "member.age" -> member.flatMap(found -> found.division().age()).map(String::valueOf);
            default -> Optional.empty();
        };
    }

    /** Cards of the plan that are not on the member's own rabbits, in the order of the plan. */
    public List<Card> sharedCards() {
        List<Card> own = ownCards();
        return plan.cards().stream().filter(card -> !own.contains(card)).toList();
    }

    /** Every card of the packet: the own ones, then the rest. */
    public Stream<Card> cards() {
        return Stream.concat(ownCards().stream(), sharedCards().stream());
    }
}
