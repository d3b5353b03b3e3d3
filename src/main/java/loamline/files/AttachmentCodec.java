package loamline.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.yard.Attachment;
import loamline.yard.Extras;
import org.jspecify.annotations.Nullable;

/** Tables that belong to a yard, as they stand in its file: each with sort, name, what it is about, and its text. */
final class AttachmentCodec {
    private static final JsonNames NAMES = JsonNames.of("sort", "name", "about", "text");

    private AttachmentCodec() {}

    /** What is no table is reported and left out; the others count. */
    static List<Attachment> read(JsonMembers owner, String member) {
        List<Attachment> read = new ArrayList<>();
        List<?> list = owner.list(member);
        for (int i = 0; i < list.size(); i++) {
            String at = owner.at(member) + "/" + i;
            if (list.get(i) instanceof Map<?, ?> map) {
                one(new JsonMembers(map, at, owner.log())).ifPresent(read::add);
            } else {
                owner.log().error("ATTACHMENT_UNREADABLE", at, "must be an object in { }; it is left out");
            }
        }
        return read;
    }

    private static Optional<Attachment> one(JsonMembers table) {
        Optional<String> sort = table.text("sort");
        Optional<String> text = table.text("text");
        if (sort.isEmpty() || text.isEmpty()) {
            table.log()
                    .error(
                            "ATTACHMENT_UNREADABLE",
                            table.pointer(),
                            "needs “sort” and “text”; it is left out: bring the table in again");
            return Optional.empty();
        }
        return Optional.of(new Attachment(
                sort.get(),
                table.text("name", ""),
                table.text("about", ""),
                text.get(),
                new Extras(table.others(NAMES))));
    }

    /** Puts them under a member, if there are any. */
    static void write(List<Attachment> attachments, Map<String, @Nullable Object> owner, String member) {
        if (!attachments.isEmpty()) {
            owner.put(member, attachments.stream().map(AttachmentCodec::written).toList());
        }
    }

    private static Map<String, @Nullable Object> written(Attachment table) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("sort", table.sort());
        members.put("name", table.name());
        members.put("about", table.about());
        members.put("text", table.text());
        NAMES.addOthers(table.extras().members(), members);
        return members;
    }
}
