package hutchleaf.cli;

import hutchleaf.edition.Edition;
import hutchleaf.edition.OwnRabbit;
import hutchleaf.edition.Packet;
import hutchleaf.edition.StudyOrder;
import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.model.Member;
import hutchleaf.model.Needs;
import hutchleaf.model.Rabbit;
import hutchleaf.model.Setting;
import hutchleaf.problem.Problems;
import hutchleaf.rabbit.Findings;
import hutchleaf.rabbit.OwnCards;
import hutchleaf.rabbit.RabbitEngine;
import hutchleaf.study.Request;
import hutchleaf.study.StudyPlan;
import hutchleaf.study.StudyPlanner;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the packets of a club: one for each member, and two that are filled in by hand. */
final class PacketList {
    /** More than the cards on one rabbit ever are. */
    private static final int CARDS_A_RABBIT = 20;

    private final Club club;
    private final Map<Level, Edition> editions;
    private final LocalDate today;
    private final Setting setting;
    private final Problems problems;

    /**
     * @param today dates the version, and starts the study where the club names no day
     * @param setting of every packet whose member has none
     */
    PacketList(Club club, Map<Level, Edition> editions, LocalDate today, Setting setting, Problems problems) {
        this.club = club;
        this.setting = setting;
        this.editions = editions;
        this.today = today;
        this.problems = problems;
    }

    /** A member's packet; empty when there was an error. */
    Optional<Packet> of(Member member, int number) {
        Edition edition = edition(member.study());
        List<OwnRabbit> rabbits = new ArrayList<>();
        for (Rabbit rabbit : member.rabbits()) {
            Findings findings = RabbitEngine.of(
                    rabbit.in(club.print().weights()), club.show().date(), member.study());
            rabbits.add(new OwnRabbit(findings, OwnCards.of(findings, member.study(), edition.library())));
        }
        return packet(edition, Optional.of(member), Optional.of(number), numbered(rabbits));
    }

    /** For a late member, or a rabbit that was borrowed or changed: the two levels that most members study. */
    List<Packet> byHand(List<Member> members) {
        List<Level> common = Arrays.stream(Level.values())
                .sorted(Comparator.comparingLong((Level level) ->
                        -members.stream().filter(each -> each.study() == level).count()))
                .limit(2)
                .sorted()
                .toList();
        List<Packet> packets = new ArrayList<>();
        for (Level level : common) {
            Edition edition = edition(level);
            Findings findings = RabbitEngine.unknown(club.show().date(), level);
            OwnRabbit any = new OwnRabbit(findings, OwnCards.of(findings, level, edition.library()));
            packet(edition, Optional.empty(), Optional.empty(), List.of(any)).ifPresent(packets::add);
        }
        return packets;
    }

    private Edition edition(Level level) {
        Edition edition = editions.get(level);
        if (edition == null) {
            throw new IllegalStateException("no edition for " + level);
        }
        return edition;
    }

    /** Cards on a second rabbit get numbers of their own. */
    private static List<OwnRabbit> numbered(List<OwnRabbit> rabbits) {
        List<OwnRabbit> numbered = new ArrayList<>();
        for (OwnRabbit rabbit : rabbits) {
            int before = numbered.size() * CARDS_A_RABBIT;
            numbered.add(new OwnRabbit(
                    rabbit.findings(),
                    rabbit.cards().stream()
                            .map(card -> renumbered(card, before))
                            .toList()));
        }
        return numbered;
    }

    private static Card renumbered(Card card, int before) {
        CardCode code = new CardCode(card.code().group(), card.code().number() + before);
        return new Card(code, card.need(), card.levels(), card.at(), card.question(), card.picture(), card.answer());
    }

    private Optional<Packet> packet(
            Edition edition, Optional<Member> member, Optional<Integer> number, List<OwnRabbit> rabbits) {
        Needs needs = member.map(Member::needs).orElse(Needs.NONE).orElse(setting);
        List<Card> own =
                rabbits.stream().flatMap(rabbit -> rabbit.cards().stream()).toList();
        Request request = new Request(
                club.practice().start().orElse(today),
                club.show().date(),
                club.practice().restDays(),
                edition.level(),
                StudyOrder.of(edition, own),
                true,
                club.practice().minutes(),
                club.at());
        Optional<StudyPlan> plan = StudyPlanner.plan(request, problems);
        return plan.map(found -> new Packet(club, edition, member, needs, number, rabbits, found, today));
    }
}
