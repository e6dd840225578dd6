package hutchleaf.content;

import hutchleaf.model.Block;
import hutchleaf.problem.Place;
import java.util.List;
import java.util.Optional;

/**
 * A heading with what stands under it, before anyone asks what it means.
 *
 * @param folder the file's folder from the content root, which links start from
 */
record Part(Heading heading, Place at, String folder, List<Block> blocks, List<Part> parts) {
    Part {
        blocks = List.copyOf(blocks);
        parts = List.copyOf(parts);
    }

    /** The only block, when there is just one and it is of the kind. */
    <B extends Block> Optional<B> only(Class<B> kind) {
        return blocks.size() == 1 && kind.isInstance(blocks.get(0))
                ? Optional.of(kind.cast(blocks.get(0)))
                : Optional.empty();
    }
}
