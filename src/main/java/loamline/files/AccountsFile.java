package loamline.files;

import java.util.LinkedHashMap;
import java.util.Map;
import loamline.account.Account;
import loamline.account.Source;
import org.jspecify.annotations.Nullable;

/** {@code accounts.json}: how each number of a result came about, by JSON pointer into the result's file. */
final class AccountsFile {
    private AccountsFile() {}

    static String text(Map<String, Account> accounts) {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        accounts.forEach((pointer, account) -> tree.put(pointer, members(account)));
        return JsonText.of(tree);
    }

    private static Map<String, @Nullable Object> members(Account account) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("formula", account.formula());
        members.put("inputs", account.inputs());
        members.put("source", account.sources().stream().map(Source::id).toList());
        members.put("note", account.note());
        members.put(
                "citations", account.sources().stream().map(Source::citation).toList());
        return members;
    }
}
