package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.model.Card;
import hutchleaf.model.CardCode;
import hutchleaf.model.Levels;
import hutchleaf.model.Words;
import hutchleaf.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code Cards}: {@code ### question (level) {11.2 core}}, an optional picture, then the answer. */
final class CardReader {
    private static final Pattern BRACES = Pattern.compile("(?<code>\\S+)(?<core> core)?");

    private final int group;
    private final Problems problems;

    /**
     * @param group what stands before the dot in the codes of this topic
     */
    CardReader(int group, Problems problems) {
        this.group = group;
        this.problems = problems;
    }

    List<Card> read(Part section, Levels levels) {
        List<Card> cards = new ArrayList<>();
        for (Part part : section.parts()) {
            Levels own = Siblings.narrowed(part, levels, problems);
            Matcher braces = BRACES.matcher(part.heading().braces().orElse(""));
            Optional<CardCode> code = braces.matches() ? code(part, braces.group("code")) : missing(part);
            Optional<Words> answer = answer(part);
            if (code.isPresent() && answer.isPresent()) {
                Card.Need need = braces.group("core") == null ? Card.Need.MORE : Card.Need.CORE;
                Words question = HeadingWords.read(part, problems);
                cards.add(new Card(code.get(), need, own, part.at(), question, picture(part), answer.get()));
            }
        }
        return cards;
    }

    private Optional<CardCode> missing(Part part) {
        String braces = part.heading().braces().orElse("");
        problems.add(
                part.at(),
                braces.isEmpty()
                        ? "card '" + part.heading().text() + "' has no code"
                        : "cannot read the card's code '{" + braces + "}'",
                "end the heading with {" + group + ".n} or {" + group + ".n core}, n the next free number");
        return Optional.empty();
    }

    private Optional<CardCode> code(Part part, String written) {
        Optional<CardCode> code = CardCode.parse(written);
        if (code.isEmpty()) {
            return missing(part);
        }
        if (code.get().group() != group) {
            problems.add(
                    part.at(),
                    "card " + code.get() + " does not belong here",
                    "the codes of this topic start with " + group + ".");
        }
        return code;
    }

    private Optional<Block.Picture> picture(Part part) {
        return part.blocks().get(0) instanceof Block.Picture picture ? Optional.of(picture) : Optional.empty();
    }

    private Optional<Words> answer(Part part) {
        List<Block> blocks = part.blocks();
        int text = !blocks.isEmpty() && blocks.get(0) instanceof Block.Picture ? 1 : 0;
        String name = "card "
                + part.heading()
                        .braces()
                        .map(braces -> braces.split(" ")[0] + " ")
                        .orElse("") + "'" + part.heading().text() + "'";
        if (blocks.size() <= text) {
            problems.add(part.at(), name + " has no answer", "write it under the heading");
            return Optional.empty();
        }
        if (blocks.size() > text + 1 || !(blocks.get(text) instanceof Block.Paragraph paragraph)) {
            problems.add(part.at(), name + " has more than one paragraph as its answer", "make it one short paragraph");
            return Optional.empty();
        }
        return Optional.of(paragraph.text());
    }
}
