package loamline.soil;

import java.util.Optional;
import loamline.account.Account;

/** Exchangeable acidity: as the laboratory gave it, or by its buffer. */
final class Acidity {
    /** At this pH and above laboratories run no SMP buffer. Warncke & Brown, NCR-221. */
    private static final double NO_SMP_FROM_PH = 6.5;
    /** Without a buffer, a soil of this pH and above is taken to have no acidity; common practice, no source. */
    private static final double NONE_FROM_PH = 7.0;

    private Acidity() {}

    /** In meq/100 g. */
    static Advice<Double> of(SampleTest test) {
        Optional<LabValue> own = test.one(Element.ACIDITY);
        if (own.isPresent()) {
            return Advice.given(own.get().value(), Account.of("acidity = value", "The laboratory's own."));
        }
        Advice<Double> ph = test.waterPh();
        Optional<LabValue> buffer = test.one(Element.BUFFER_PH);
        if (buffer.isEmpty()) {
            return ph.value().filter(p -> p >= NONE_FROM_PH).isPresent()
                    ? Advice.given(0.0, Account.of("acidity = 0", "pH " + NONE_FROM_PH + " or more and no buffer pH."))
                    : Advice.refused("the acidity is not known: fill in buffer pH with its method, or acidity");
        }
        return new Concentrations(test.tables())
                .ph(buffer.get())
                .map(bufferPh -> byBuffer(buffer.get().method().orElseThrow(), bufferPh, ph.value()));
    }

    private static double byBuffer(LabMethod method, double bufferPh, Optional<Double> ph) {
        return switch (method) {
            case ADAMS_EVANS, MOORE_SIKORA -> adamsEvans(bufferPh);
            case MEHLICH -> LimeFormulas.mehlichAcidity(bufferPh);
            case WOODRUFF -> LimeFormulas.woodruffAcidity(bufferPh);
            default -> ph.filter(p -> p >= NO_SMP_FROM_PH).isPresent() ? 0 : smp(bufferPh);
        };
    }

    /** 8 · (8.00 − buffer pH), meq/100 g. Clemson University, CEC calculations. */
    static double adamsEvans(double bufferPh) {
        return Math.max(0, 8 * (8.00 - bufferPh));
    }

    /** 12 · (7.0 − buffer pH), meq/100 g. Believed from Warncke & Brown, NCR-221. */
    static double smp(double bufferPh) {
        return Math.max(0, 12 * (7.0 - bufferPh));
    }
}
