package hutchleaf.model;

import hutchleaf.problem.Place;
import java.util.List;

/** What a judge scores at one level: six blocks of stops, each for hands and voice, and what counts all through. */
public record ScoreSheet(Level level, Place at, List<Block> blocks, List<Item> items) {
    /**
     * A few stops scored together.
     *
     * @param letter A to F
     * @param hands most points for what the hands do
     * @param voice most points for what is said
     */
    public record Block(String letter, String name, List<Integer> stops, String lookingFor, int hands, int voice) {
        public Block {
            stops = List.copyOf(stops);
        }
    }

    /** Something scored all through, by one number. */
    public record Item(String name, String lookingFor, int points) {}

    public ScoreSheet {
        blocks = List.copyOf(blocks);
        items = List.copyOf(items);
    }

    public int hands() {
        return blocks.stream().mapToInt(Block::hands).sum();
    }

    public int voice() {
        return blocks.stream().mapToInt(Block::voice).sum();
    }

    public int allThrough() {
        return items.stream().mapToInt(Item::points).sum();
    }

    /** Always computed, never written: cards in print have carried totals that their lines do not add up to. */
    public int total() {
        return hands() + voice() + allThrough();
    }
}
