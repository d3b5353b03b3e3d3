package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.soil.Advice;
import loamline.soil.Change;
import loamline.soil.Exchange;
import loamline.soil.Gypsum;
import loamline.soil.Lime;
import loamline.soil.Rating;
import loamline.soil.Recommended;
import loamline.soil.SampleResult;
import loamline.soil.Saturation;
import loamline.soil.Sodium;
import loamline.soil.SoilReport;
import loamline.soil.Sulfur;
import loamline.soil.Texture;
import org.jspecify.annotations.Nullable;

/** What a soil report means, as {@code soil.json} and its accounts. */
public final class SoilFiles {
    private SoilFiles() {}

    /** The files by name, as text. */
    public static Map<String, String> of(SoilReport report) {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("samples", report.samples().stream().map(SoilFiles::members).toList());
        Map<String, String> files = new LinkedHashMap<>();
        files.put("soil.json", JsonText.of(tree));
        files.put("accounts.json", AccountsFile.text(accounts(report)));
        return files;
    }

    private static Map<String, @Nullable Object> members(SampleResult sample) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("id", sample.id());
        members.put("zones", sample.zones());
        members.put("labs", sample.labs());
        members.put("date", sample.date().map(Object::toString).orElse(null));
        members.put("ratings", sample.ratings().stream().map(SoilFiles::rating).toList());
        members.put("texture", sample.texture().map(Texture::label).orElse(null));
        members.put("exchange", exchange(sample));
        members.put("salinity", sodium(sample.sodium()));
        members.put("lime", lime(sample.lime()));
        members.put("sulfur", sulfur(sample.sulfur()));
        members.put("gypsum", gypsum(sample.gypsum()));
        Map<String, @Nullable Object> needs = new LinkedHashMap<>();
        needs.put("P2O5GM2", sample.needs().p2o5GM2().value().orElse(null));
        needs.put("K2OGM2", sample.needs().k2oGM2().value().orElse(null));
        needs.put("P2O5Refused", refused(sample.needs().p2o5GM2()));
        needs.put("K2ORefused", refused(sample.needs().k2oGM2()));
        members.put("needs", needs);
        members.put("recommended", recommended(sample.recommended()));
        members.put("cautions", sample.cautions());
        return members;
    }

    private static Map<String, @Nullable Object> recommended(Recommended laboratory) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("P2O5GM2", laboratory.p2o5GM2().orElse(null));
        members.put("K2OGM2", laboratory.k2oGM2().orElse(null));
        members.put("limeCceKgM2", laboratory.limeGM2().map(g -> g / 1000).orElse(null));
        return members;
    }

    private static @Nullable String refused(Advice<?> advice) {
        return advice.isGiven() ? null : advice.reason();
    }

    private static Map<String, @Nullable Object> rating(Rating rating) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("element", rating.value().element().key());
        members.put("value", rating.value().value());
        members.put("unit", blankAsNull(rating.value().made().unitText()));
        members.put("extractant", blankAsNull(rating.value().made().extractantText()));
        members.put("method", blankAsNull(rating.value().made().methodText()));
        members.put("depthM", orNull(rating.value().made().depthM()));
        members.put("rating", rating.name().orElse(null));
        members.put("refused", refused(rating.standing()));
        members.put("guideline", blankAsNull(rating.guideline()));
        members.put(
                "source",
                rating.standing()
                        .value()
                        .map(s -> s.range().origin().source().id())
                        .orElse(null));
        members.put(
                "status",
                rating.standing().value().map(s -> s.range().origin().status()).orElse(null));
        members.put("change", rating.change().map(SoilFiles::change).orElse(null));
        return members;
    }

    private static Map<String, @Nullable Object> change(Change change) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("since", change.since().toString());
        members.put("before", change.before());
        members.put("difference", change.difference());
        members.put("beyondError", change.beyondError().orElse(null));
        return members;
    }

    private static @Nullable String blankAsNull(String text) {
        return text.isEmpty() ? null : text;
    }

    private static @Nullable Double orNull(OptionalDouble number) {
        return number.isPresent() ? number.getAsDouble() : null;
    }

    private static Map<String, @Nullable Object> exchange(SampleResult sample) {
        Advice<Exchange> advice = sample.exchange();
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("cecMeq100g", advice.value().map(Exchange::cecMeq).orElse(null));
        members.put("measured", advice.value().map(Exchange::measured).orElse(null));
        members.put(
                "baseSaturationPct",
                advice.value().map(Exchange::baseSaturationPct).orElse(null));
        Map<String, @Nullable Object> saturation = new LinkedHashMap<>();
        advice.value()
                .ifPresent(e -> e.cationsMeq()
                        .keySet()
                        .forEach(cation -> saturation.put(cation.key(), e.saturationPct(cation))));
        members.put("saturationPct", saturation);
        members.put(
                "saturationRanges",
                sample.saturations().stream().map(SoilFiles::saturation).toList());
        members.put("refused", refused(advice));
        return members;
    }

    private static Map<String, @Nullable Object> saturation(Saturation saturation) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("share", saturation.share());
        members.put("value", saturation.value());
        members.put("low", saturation.low());
        members.put("high", orNull(saturation.high()));
        members.put("place", saturation.place().name().toLowerCase(Locale.ROOT));
        members.put("guideline", saturation.guideline());
        members.put("source", saturation.origin().source().id());
        members.put("status", saturation.origin().status());
        return members;
    }

    private static Map<String, @Nullable Object> sodium(Sodium sodium) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("class", sodium.name().orElse(null));
        members.put("ecePasteDsM", orNull(sodium.eceDsM()));
        members.put("sar", orNull(sodium.sar()));
        members.put("espPct", orNull(sodium.espPct()));
        return members;
    }

    private static Map<String, @Nullable Object> lime(Advice<Lime> advice) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("method", advice.value().map(Lime::method).orElse(null));
        members.put("cceKgM2", advice.value().map(Lime::cceKgM2).orElse(null));
        members.put("productKgM2", advice.value().map(Lime::productKgM2).orElse(null));
        members.put("doses", advice.value().map(Lime::dosesKgM2).orElse(List.of()));
        members.put("monthsBetween", advice.value().map(Lime::monthsBetween).orElse(null));
        members.put("refused", refused(advice));
        members.put("cautions", advice.value().map(Lime::cautions).orElse(List.of()));
        return members;
    }

    private static Map<String, @Nullable Object> sulfur(Advice<Sulfur> advice) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("kgM2", advice.value().map(Sulfur::kgM2).orElse(null));
        members.put("doses", advice.value().map(Sulfur::dosesKgM2).orElse(List.of()));
        members.put("years", advice.value().map(Sulfur::years).orElse(List.of()));
        members.put("refused", refused(advice));
        members.put("cautions", advice.value().map(Sulfur::cautions).orElse(List.of()));
        return members;
    }

    private static Map<String, @Nullable Object> gypsum(Advice<Gypsum> advice) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("kgM2", advice.value().map(Gypsum::kgM2).orElse(null));
        members.put("refused", refused(advice));
        members.put("cautions", advice.value().map(Gypsum::cautions).orElse(List.of()));
        return members;
    }

    private static Map<String, Account> accounts(SoilReport report) {
        Map<String, Account> accounts = new LinkedHashMap<>();
        for (int i = 0; i < report.samples().size(); i++) {
            String at = "/samples/" + i;
            SampleResult sample = report.samples().get(i);
            for (int j = 0; j < sample.ratings().size(); j++) {
                put(
                        accounts,
                        at + "/ratings/" + j + "/rating",
                        sample.ratings().get(j).standing());
            }
            put(accounts, at + "/exchange/cecMeq100g", sample.exchange());
            put(accounts, at + "/lime/cceKgM2", sample.lime());
            sample.lime().value().ifPresent(lime -> accounts.put(at + "/lime/productKgM2", lime.product()));
            put(accounts, at + "/sulfur/kgM2", sample.sulfur());
            put(accounts, at + "/gypsum/kgM2", sample.gypsum());
            put(accounts, at + "/needs/P2O5GM2", sample.needs().p2o5GM2());
            put(accounts, at + "/needs/K2OGM2", sample.needs().k2oGM2());
        }
        return accounts;
    }

    private static void put(Map<String, Account> accounts, String pointer, Advice<?> advice) {
        advice.account().ifPresent(account -> accounts.put(pointer, account));
    }
}
