package loamline.soil;

import java.util.Optional;
import java.util.function.Function;
import loamline.account.Account;

/**
 * Something to act on, or the reason why there is nothing.
 *
 * @param value empty if it is refused
 * @param reason why it is refused and what to do about it; empty if it is given
 * @param account how it came about; empty if it is refused
 */
public record Advice<T>(Optional<T> value, String reason, Optional<Account> account) {
    static <T> Advice<T> given(T value, Account account) {
        return new Advice<>(Optional.of(value), "", Optional.of(account));
    }

    static <T> Advice<T> refused(String reason) {
        return new Advice<>(Optional.empty(), reason, Optional.empty());
    }

    public boolean isGiven() {
        return value.isPresent();
    }

    /** The same advice about something that follows from the value, by the same account. */
    public <R> Advice<R> map(Function<T, R> next) {
        return new Advice<>(value.map(next), reason, account);
    }
}
