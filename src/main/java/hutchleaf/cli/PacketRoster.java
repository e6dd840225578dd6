package hutchleaf.cli;

import hutchleaf.club.ClubReader;
import hutchleaf.club.Roster;
import hutchleaf.model.Club;
import hutchleaf.model.Library;
import hutchleaf.model.Member;
import hutchleaf.press.Press;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A club and those of its members who are to be printed.
 *
 * @param members those whose rows are right, and whose names the fonts can draw
 * @param asked of these, whose packets are asked for
 * @param today dates the packets
 * @param rows what is wrong in rows, which stops only their members when others are to be printed
 */
record PacketRoster(Club club, List<Member> members, List<Member> asked, LocalDate today, Problems rows) {
    /**
     * Reads the club that was named, or the demo club as on the first day of its study.
     *
     * @param only the one member who is asked for
     * @return empty when there was an error that concerns all
     */
    static Optional<PacketRoster> read(
            ClubRequest request,
            Optional<String> only,
            LocalDate now,
            Library library,
            Press press,
            Problems problems) {
        Path folder = request.folder().orElseGet(Embedded::demoClub);
        String shown = request.folder()
                .map(named -> Objects.requireNonNullElse(
                                named.toAbsolutePath().normalize().getFileName(), named)
                        .toString())
                .orElse("demo-club");
        Optional<Roster> roster =
                ClubReader.read(folder, shown, library, request.today().orElse(now), problems);
        return roster.map(found -> {
            LocalDate today = request.today()
                    .or(() -> request.folder().isPresent()
                            ? Optional.empty()
                            : found.club().practice().start())
                    .orElse(now);
            return of(found, today, only, press, problems);
        });
    }

    private static PacketRoster of(
            Roster roster, LocalDate today, Optional<String> only, Press press, Problems problems) {
        Problems rows = new Problems();
        roster.bad().forEach(bad -> rows.addAll(bad.problems()));
        List<Member> members = new ArrayList<>();
        for (Member member : roster.members()) {
            Problems own = new Problems();
            Roster.names(member).forEach(written -> press.checkGlyphs(written.text(), written.at(), own));
            if (!own.hasErrors()) {
                members.add(member);
            }
            rows.addAll(own);
        }
        roster.clubNames().forEach(written -> press.checkGlyphs(written.text(), written.at(), problems));
        List<Member> asked = only.map(name -> named(name, members, problems)).orElse(members);
        return new PacketRoster(roster.club(), members, asked, today, rows);
    }

    private static List<Member> named(String name, List<Member> members, Problems problems) {
        List<Member> found = members.stream()
                .filter(member -> member.name().equalsIgnoreCase(name)
                        || member.firstName().equalsIgnoreCase(name))
                .toList();
        if (found.size() != 1) {
            problems.add(
                    Place.whole("--only " + name),
                    found.isEmpty() ? "no member has this name" : found.size() + " members have this name",
                    "give the whole name as the roster has it");
        }
        return found;
    }
}
