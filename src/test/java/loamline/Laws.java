package loamline;

/** What all laws (jqwik properties) share. */
public final class Laws {
    /**
     * Seed of every law: a build says the same of the same code however often it runs. For cases never drawn before,
     * make it the empty text and run the laws some times; what they find becomes a test of its own.
     */
    public static final String SEED = "1";

    private Laws() {}
}
