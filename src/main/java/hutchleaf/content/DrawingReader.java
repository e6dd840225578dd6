package hutchleaf.content;

import hutchleaf.model.Drawing;
import hutchleaf.problem.Problems;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how wide and high each figure is; what stands inside it is checked before it is printed. */
final class DrawingReader {
    private static final Pattern VIEW_BOX =
            Pattern.compile("<svg[^>]*\\sviewBox=\"\\S+\\s+\\S+\\s+(\\d+(?:\\.\\d+)?)\\s+(\\d+(?:\\.\\d+)?)\"");

    private DrawingReader() {}

    static Map<String, Drawing> read(ContentTree tree, Problems problems) {
        Map<String, Drawing> drawings = new LinkedHashMap<>();
        for (String path : tree.files(".svg")) {
            Matcher box = VIEW_BOX.matcher(tree.text(path).orElse(""));
            double width = box.find() ? Double.parseDouble(box.group(1)) : 0;
            double height = width > 0 ? Double.parseDouble(box.group(2)) : 0;
            if (height > 0) {
                drawings.put(path, new Drawing(path, width / height));
            } else {
                problems.add(
                        tree.place(path).atLine(1),
                        "the drawing has no viewBox with a width and a height",
                        "add viewBox=\"0 0 width height\" to <svg>");
            }
        }
        return drawings;
    }
}
