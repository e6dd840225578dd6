package hutchleaf.club;

import hutchleaf.content.ContentTree;
import hutchleaf.model.Library;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.Optional;

/** Reads a club's folder: {@code club.md} and {@code members.csv}. */
public final class ClubReader {
    private static final String CLUB = "club.md";
    private static final String MEMBERS = "members.csv";

    private ClubReader() {}

    /**
     * Reads a club.
     *
     * <p>An error of a whole file goes to the problems and gives no roster: the file is missing or unreadable, a key or a
     * column is wrong, there are no rows. An error of one row goes to {@link Roster#bad()} and stops no other row: a
     * caller that finds bad rows prints none, or the others when the leader asked for that.
     *
     * @param folder on disk or inside a zip file
     * @param shownName how messages name the folder, for example {@code demo-club}
     * @param library gives breeds, colours, rule sets and figures
     * @param today no birth date may lie after it
     * @return empty when the problems hold an error of a whole file
     * @throws java.io.UncheckedIOException when the disk is broken
     */
    public static Optional<Roster> read(
            Path folder, String shownName, Library library, LocalDate today, Problems problems) {
        if (!Files.isDirectory(folder)) {
            problems.add(Place.whole(shownName), "there is no such folder", "name a club's folder that is there");
            return Optional.empty();
        }
        ContentTree tree = new ContentTree(folder, shownName);
        Place clubAt = Place.whole(shownName + "/" + CLUB);
        Place membersAt = Place.whole(shownName + "/" + MEMBERS);
        Optional<ClubFile> club =
                text(tree, CLUB, clubAt, problems).flatMap(text -> ClubFile.read(clubAt, text, library, problems));
        Optional<String> rows = text(tree, MEMBERS, membersAt, problems);
        return club.flatMap(known -> rows.flatMap(
                text -> new MembersFile(known.club(), known.dates(), library, today, problems).read(membersAt, text)));
    }

    private static Optional<String> text(ContentTree tree, String file, Place at, Problems problems) {
        Optional<byte[]> bytes = tree.bytes(file);
        if (bytes.isEmpty()) {
            problems.add(at, "there is no such file", "a club's folder holds " + CLUB + " and " + MEMBERS);
        }
        return bytes.flatMap(found -> Decoded.read(found, at, problems))
                .map(text -> Normalizer.normalize(text, Normalizer.Form.NFC));
    }
}
