package hutchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can be read through a content tree, and what can't. */
class ContentTreeTest {
    @TempDir
    Path temp = Path.of("");

    private Path root = temp;

    @BeforeEach
    void layOutATree() throws IOException {
        root = Files.createDirectories(temp.resolve("content"));
        Files.createDirectories(root.resolve("b"));
        Files.writeString(temp.resolve("secret.md"), "outside");
        Files.writeString(root.resolve("b/z.md"), "z");
        Files.writeString(root.resolve("b/a.md"), "a");
        Files.writeString(root.resolve("B.md"), "B");
        Files.writeString(root.resolve("b-c.md"), "c");
        Files.writeString(root.resolve("b/drawing.svg"), "<svg/>");
    }

    private ContentTree tree() {
        return new ContentTree(root, "content");
    }

    @Test
    void filesAreListedByTheirPathStringFromTheRoot() {
        // '-' (U+002D) stands before '/' (U+002F), capitals before small letters, on every machine.
        assertThat(tree().files(".md")).containsExactly("B.md", "b-c.md", "b/a.md", "b/z.md");
    }

    @Test
    void aFileInsideTheRootIsRead() {
        assertThat(tree().text("b/a.md")).contains("a");
        assertThat(tree().text("b/../b/a.md")).contains("a");
    }

    @Test
    void aPathOutOfTheRootReadsNothing() {
        assertThat(tree().text("../secret.md")).as("../secret.md").isEmpty();
        assertThat(tree().text("b/../../secret.md")).isEmpty();
        assertThat(tree().text(temp.resolve("secret.md").toAbsolutePath().toString()))
                .isEmpty();
    }

    @Test
    void aLinkOutOfTheRootReadsNothing() throws IOException {
        Files.createSymbolicLink(root.resolve("b/link.md"), temp.resolve("secret.md"));
        assertThat(tree().text("b/link.md"))
                .as("b/link.md, a link out of the tree")
                .isEmpty();
    }

    @Test
    void aFolderLinkedOutOfTheRootReadsNothing() throws IOException {
        Files.createSymbolicLink(root.resolve("away"), temp);
        assertThat(tree().text("away/secret.md"))
                .as("away/secret.md, in a linked folder")
                .isEmpty();
    }

    @Test
    void aLinkInsideTheRootIsRead() throws IOException {
        Files.createSymbolicLink(root.resolve("again.md"), root.resolve("b/a.md"));
        assertThat(tree().text("again.md")).contains("a");
    }

    @Test
    void aFolderOrAMissingFileReadsNothing() {
        assertThat(tree().bytes("b")).isEmpty();
        assertThat(tree().bytes("b/none.md")).isEmpty();
    }

    @Test
    void everyLineEndReadsAsLineFeedAndTheByteOrderMarkGoes() throws IOException {
        Files.write(root.resolve("ends.md"), "\uFEFFone\r\ntwo\rthree\n".getBytes(StandardCharsets.UTF_8));
        assertThat(tree().text("ends.md")).contains("one\ntwo\nthree\n");
    }
}
