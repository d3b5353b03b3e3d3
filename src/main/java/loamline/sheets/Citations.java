package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loamline.account.Source;
import loamline.scene.Role;

/** Numbers sources in the order in which they are met. */
final class Citations {
    private final List<String> cited = new ArrayList<>();

    /** The numbers of some sources, such as {@code [1] [3]}. */
    String marks(List<Source> sources) {
        return sources.stream().map(this::number).distinct().collect(Collectors.joining(" "));
    }

    String number(Source source) {
        if (!cited.contains(source.citation())) {
            cited.add(source.citation());
        }
        return "[" + (cited.indexOf(source.citation()) + 1) + "]";
    }

    /** All that was cited, a line each. */
    List<Block> lines(Blocks blocks) {
        List<Block> lines = new ArrayList<>();
        for (String citation : cited) {
            Block words = blocks.paragraph(citation, Blocks.SMALL, Role.INK);
            lines.add(blocks.hanging("[" + (lines.size() + 1) + "]", 6, words, Blocks.SMALL));
        }
        return lines;
    }
}
