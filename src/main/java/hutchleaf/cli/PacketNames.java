package hutchleaf.cli;

import hutchleaf.model.Member;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Names of packets' folders: first name and initial only, so that a file list tells no more of a child. */
final class PacketNames {
    private final Set<String> taken = new HashSet<>();

    /**
     * The folder of a member's packet.
     *
     * @param number the contestant's, which tells two of one name apart
     */
    String of(Member member, int number) {
        String first = letters(member.firstName());
        String last = letters(member.name().substring(member.name().lastIndexOf(' ') + 1));
        String name = member.name().contains(" ") && !last.isEmpty()
                ? first + "-" + last.substring(0, last.offsetByCodePoints(0, 1))
                : first;
        String free = name.isEmpty() || !taken.add(name) ? (name + "-" + number).replaceFirst("^-", "member-") : name;
        taken.add(free);
        return "packets/" + free + "/";
    }

    /** Lower case, without accents where the letter has a plain form, words joined by hyphens. */
    static String letters(String words) {
        return Normalizer.normalize(words, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
    }
}
