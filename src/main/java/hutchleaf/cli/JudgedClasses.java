package hutchleaf.cli;

import hutchleaf.model.Club;
import hutchleaf.model.DivisionRule;
import hutchleaf.model.Library;
import hutchleaf.model.Member;
import hutchleaf.model.Rabbit;
import hutchleaf.page.JudgedClass;
import hutchleaf.page.Spelled;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** The classes of a club's show, each once for every judge. */
final class JudgedClasses {
    private final PacketRoster roster;
    private final Contestants numbers;
    private final ScoreSheetsOptions.Wanted wanted;
    private final KeptWords kept;
    private final Problems problems;

    private JudgedClasses(
            PacketRoster roster,
            Contestants numbers,
            ScoreSheetsOptions.Wanted wanted,
            KeptWords kept,
            Problems problems) {
        this.kept = kept;
        this.roster = roster;
        this.numbers = numbers;
        this.wanted = wanted;
        this.problems = problems;
    }

    /**
     * All that are asked for, the youngest first, each judge's after another.
     *
     * @return fewer where a problem was added
     */
    static List<JudgedClass> of(
            PacketRoster roster,
            Contestants numbers,
            ScoreSheetsOptions.Wanted wanted,
            Library library,
            Spelled spelled,
            Problems problems) {
        return new JudgedClasses(roster, numbers, wanted, new KeptWords(spelled), problems).all(library);
    }

    private List<JudgedClass> all(Library library) {
        Map<String, DivisionRule> divisions = new LinkedHashMap<>();
        library.contest().divisions().stream()
                .filter(rule -> rule.ruleSet().equals(roster.club().show().ruleSet()))
                .forEach(rule -> divisions.putIfAbsent(rule.division(), rule));
        wanted.division().ifPresent(name -> choose(name, divisions));
        List<JudgedClass> classes = new ArrayList<>();
        divisions.values().stream()
                .sorted((one, other) -> one.level().compareTo(other.level()))
                .forEach(rule -> classes.addAll(judged(rule)));
        if (classes.isEmpty() && !problems.hasErrors()) {
            problems.add(roster.club().at(), "nobody of the club shows", "add members, or --blank --copies 10");
        }
        return classes;
    }

    private void choose(String name, Map<String, DivisionRule> divisions) {
        Set<String> known = new LinkedHashSet<>();
        divisions.values().forEach(rule -> {
            known.add(rule.level().word());
            known.add(rule.division());
        });
        divisions
                .values()
                .removeIf(rule -> !rule.division().equalsIgnoreCase(name)
                        && !rule.level().word().equalsIgnoreCase(name));
        if (divisions.isEmpty()) {
            problems.add(Place.whole("--division " + name), "there is no such division", NearMiss.mend(name, known));
        }
    }

    private List<JudgedClass> judged(DivisionRule rule) {
        List<Member> members = numbers.inOrderOfShowing(roster.members()).stream()
                .filter(member -> member.division().name().equals(rule.division()))
                .toList();
        int open = wanted.blank() ? wanted.copies().orElse(members.size()) : 0;
        int contestants = wanted.blank() ? open : members.size();
        if (contestants == 0) {
            wanted.division()
                    .ifPresent(name -> problems.add(
                            Place.whole("--division " + name),
                            "nobody of the club is in it",
                            "leave it out, or add --blank --copies 10"));
            return List.of();
        }
        int copies = wanted.blank() ? 1 : wanted.copies().orElse(1);
        JudgedClass.Amounts amounts =
                new JudgedClass.Amounts(open, copies, wanted.spare().of(contestants * copies));
        List<JudgedClass.Entrant> entrants =
                wanted.blank() ? List.of() : members.stream().map(this::entrant).toList();
        Club club = kept.club(roster.club());
        return IntStream.rangeClosed(1, wanted.judges())
                .mapToObj(judge -> new JudgedClass(
                        new JudgedClass.Show(
                                club.name(),
                                wanted.title()
                                        .map(kept.spelled()::kept)
                                        .orElse(club.show().name()),
                                club.show().date()),
                        rule.division(),
                        rule.level(),
                        new JudgedClass.Judging(
                                judge, wanted.judges(), rule.terms().competes()),
                        wanted.beside(),
                        entrants,
                        amounts))
                .toList();
    }

    /** A member with the rabbit they show, the first of the roster. */
    private JudgedClass.Entrant entrant(Member written) {
        Member member = kept.member(written);
        Rabbit rabbit = member.rabbits().get(0);
        return new JudgedClass.Entrant(
                numbers.number(member),
                member.name(),
                rabbit.name(),
                rabbit.breedName(),
                Optional.of(rabbit.earNumber()).filter(ear -> !ear.isEmpty()));
    }
}
