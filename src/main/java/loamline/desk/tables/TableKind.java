package loamline.desk.tables;

import java.util.List;
import java.util.function.Function;
import loamline.account.Problem;
import loamline.yard.Attachment;

/**
 * What a step says about the tables it works with.
 *
 * @param sort what they are
 * @param word what one is called in the middle of a sentence, such as {@code cup readings}
 * @param about what each is about in a word, such as {@code valve}; empty if that is not asked
 * @param header the columns of a new one
 * @param check what is wrong with the text of one, with the lines
 */
public record TableKind(
        Attachment.Sort sort,
        String word,
        String about,
        List<String> header,
        Function<Attachment, List<Problem>> check) {
    public TableKind {
        header = List.copyOf(header);
    }
}
