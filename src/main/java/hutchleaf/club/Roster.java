package hutchleaf.club;

import hutchleaf.model.Club;
import hutchleaf.model.Member;
import hutchleaf.model.Rabbit;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problem;
import java.util.List;
import java.util.stream.Stream;

/**
 * A club and its members.
 *
 * @param members in the order of their first rows; a member with a bad row is not among them, since the packet would
 *     speak of the wrong rabbit
 * @param bad the rows that cannot be printed; a caller that prints the others says so
 */
public record Roster(Club club, List<Member> members, List<Bad> bad) {
    /**
     * A row that cannot be printed.
     *
     * @param name the member's name as the row gives it; empty where it gives none
     * @param problems at least one error, and the row's warnings
     */
    public record Bad(String name, Place at, List<Problem> problems) {
        public Bad {
            problems = List.copyOf(problems);
        }
    }

    /** Words of the leader's that are printed as they stand, and where they were written. */
    public record Written(String text, Place at) {}

    public Roster {
        members = List.copyOf(members);
        bad = List.copyOf(bad);
    }

    /** The lines of {@code club.md} that the fonts must be able to draw. */
    public Stream<Written> clubNames() {
        Stream<Written> lines = Stream.of(
                        club.name(),
                        club.show().name(),
                        club.practice().grip(),
                        club.print().plain().currency(),
                        club.print().card().currency())
                .map(text -> new Written(text, club.at()));
        Stream<Written> letter = club.letter().stream()
                .flatMap(block -> block.words().map(words -> new Written(words.plain(), block.at())));
        return Stream.concat(lines, letter).filter(written -> !written.text().isEmpty());
    }

    /** What the fonts must be able to draw of a member: names, ear numbers, varieties. */
    public static Stream<Written> names(Member member) {
        return Stream.concat(
                        Stream.of(new Written(member.name(), member.at())),
                        member.rabbits().stream().flatMap(Roster::names))
                .filter(written -> !written.text().isEmpty());
    }

    private static Stream<Written> names(Rabbit rabbit) {
        return Stream.of(rabbit.name(), rabbit.earNumber(), rabbit.coat().variety())
                .map(text -> new Written(text, rabbit.at()));
    }
}
