package loamline.water.need;

/** What is known about the water in the air. */
public sealed interface Humidity {
    /** Actual vapour pressure, kPa, of a day between two temperatures. */
    double vapourKPa(double tMinC, double tMaxC);

    /** @param pct mean relative humidity, per cent, 0 to 100 */
    record Mean(double pct) implements Humidity {
        public Mean {
            requirePct(pct);
        }

        @Override
        public double vapourKPa(double tMinC, double tMaxC) {
            return pct / 100 * Fao56.meanSaturationKPa(tMinC, tMaxC);
        }
    }

    /**
     * @param leastPct least relative humidity of the day, per cent, 0 to 100
     * @param greatestPct greatest, at least as much
     */
    record Range(double leastPct, double greatestPct) implements Humidity {
        public Range {
            requirePct(leastPct);
            requirePct(greatestPct);
            if (leastPct > greatestPct) {
                throw new IllegalArgumentException("leastPct " + leastPct + " is above greatestPct " + greatestPct);
            }
        }

        @Override
        public double vapourKPa(double tMinC, double tMaxC) {
            return (Fao56.saturationKPa(tMinC) * greatestPct + Fao56.saturationKPa(tMaxC) * leastPct) / 200;
        }
    }

    /** @param pct greatest relative humidity of the day, per cent: where the least is not known */
    record Greatest(double pct) implements Humidity {
        public Greatest {
            requirePct(pct);
        }

        @Override
        public double vapourKPa(double tMinC, double tMaxC) {
            return Fao56.saturationKPa(tMinC) * pct / 100;
        }
    }

    private static void requirePct(double pct) {
        if (!(pct >= 0 && pct <= 100)) {
            throw new IllegalArgumentException("relative humidity " + pct + " must be 0 to 100 per cent");
        }
    }
}
