package hutchleaf.cli;

import hutchleaf.edition.Edition;
import hutchleaf.edition.Packet;
import hutchleaf.edition.StudyOrder;
import hutchleaf.model.Card;
import hutchleaf.problem.Problems;
import java.util.List;

/** Which cards a packet holds beside the member's own. */
final class ChosenCards {
    private ChosenCards() {}

    static List<Card> of(Packet packet, PacketOptions.Cards cards) {
        return switch (cards) {
            case PLAN -> packet.sharedCards();
            case WHOLE_DECK -> packet.edition().deck();
            case NEW_ONLY -> newOnly(packet);
        };
    }

    /** Without those of the level that the member was in a year ago; all of them for who was in none. */
    private static List<Card> newOnly(Packet packet) {
        return packet.member()
                .flatMap(member -> member.lastYear())
                .map(level -> Edition.of(packet.edition().library(), level, new Problems()))
                .map(before -> StudyOrder.newSince(packet.sharedCards(), before))
                .orElseGet(packet::sharedCards);
    }
}
