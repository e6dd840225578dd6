package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.Levels;
import hutchleaf.model.PacketWords;
import hutchleaf.model.PacketWords.Heading;
import hutchleaf.model.Section;
import hutchleaf.problem.NearMiss;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;

/** Reads the lists that every packet prints. */
final class PacketReader {
    private PacketReader() {}

    static PacketWords read(MarkdownFile file, Problems problems) {
        file.front().allowOnly(DataFile.KEYS, problems);
        Siblings siblings = new Siblings(problems);
        List<Section> sections = new ArrayList<>();
        for (Part part : file.parts()) {
            String heading = part.heading().text();
            Levels levels = part.heading().levels().orElse(Levels.ALL);
            siblings.note("list", heading, levels, part.at());
            if (Heading.of(heading).isEmpty()) {
                problems.add(part.at(), "unknown heading '" + heading + "'", NearMiss.mend(heading, Heading.texts()));
            } else if (part.only(Block.Bullets.class).isEmpty() || !part.parts().isEmpty()) {
                problems.add(
                        part.at(),
                        "'" + heading + "' is not in its form",
                        "write one list under it, each line with - in front");
            }
            sections.add(new Section(Section.Kind.PROSE, heading, levels, part.at(), part.blocks()));
        }
        return new PacketWords(sections);
    }
}
