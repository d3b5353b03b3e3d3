package loamline.desk.sun;

import java.util.List;
import java.util.OptionalInt;
import javafx.beans.InvalidationListener;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.VBox;
import loamline.account.Problem;
import loamline.desk.facts.Row;
import loamline.desk.facts.RowView;
import loamline.desk.facts.Rows;
import loamline.desk.session.Session;
import loamline.desk.theme.Words;
import loamline.desk.theme.Written;
import loamline.sun.SunStudy;
import loamline.sun.ZoneSun;
import loamline.units.Formatted;
import loamline.units.Formatting;
import loamline.units.Measure;

/** The Sun step: for which days, hours of sun by zone, and shade at an hour. */
public final class SunStep extends VBox {
    private static final int MINUTES_A_DAY = 24 * 60;
    private static final int STEP_MIN = 10;
    private static final int NOON = MINUTES_A_DAY / 2;

    private final Session session;
    private final SunModel model;
    private final Slider hour = new Slider(0, MINUTES_A_DAY, NOON);
    private final CheckBox atAnHour = new CheckBox("Shade at an hour");
    private final Label time = Words.wrapped("", "soft");
    private final VBox zones = new VBox(2);

    public SunStep(Session session, SunModel model) {
        super(8);
        this.session = session;
        this.model = model;
        getStyleClass().add("sun-step");
        ComboBox<Season> season = new ComboBox<>();
        season.getItems().setAll(Season.values());
        season.setConverter(Written.as(Season::title));
        season.setAccessibleText("Days");
        season.setMaxWidth(Double.MAX_VALUE);
        season.valueProperty().bindBidirectional(model.season());
        hour.setAccessibleText("Hour of the day, by the sun");
        hour.setBlockIncrement(STEP_MIN);
        hour.setMajorTickUnit(STEP_MIN);
        hour.setMinorTickCount(0);
        hour.setSnapToTicks(true);
        hour.disableProperty().bind(atAnHour.selectedProperty().not());
        InvalidationListener chosen = o ->
                model.minute().set(atAnHour.isSelected() ? OptionalInt.of((int) hour.getValue()) : OptionalInt.empty());
        atAnHour.selectedProperty().addListener(chosen);
        hour.valueProperty().addListener(chosen);
        getChildren()
                .addAll(
                        season,
                        atAnHour,
                        hour,
                        time,
                        new SunZonesView(model.zones()),
                        title("Hours of direct sun a day"),
                        zones,
                        Words.wrapped("Without clouds, on level ground. Heights and crowns change it most.", "soft"));
        InvalidationListener changed = o -> show();
        model.known().addListener(changed);
        model.minute().addListener(changed);
        session.units().addListener(changed);
        show();
    }

    private static Label title(String words) {
        Label title = new Label(words);
        title.getStyleClass().add("group-title");
        return title;
    }

    private void show() {
        int minute = model.minute().get().orElse(-1);
        time.setText(
                minute < 0
                        ? ""
                        : SunModel.clock(minute) + " by the sun, noon when it stands highest. " + model.glareWords());
        zones.getChildren().clear();
        model.answer().map(SunStudy.Answer::problems).orElse(List.of()).stream()
                .map(Problem::message)
                .map(words -> Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".")
                .forEach(words -> zones.getChildren().add(Words.wrapped(words, "warn")));
        model.study()
                .ifPresent(study -> study.zones()
                        .forEach(zone ->
                                rows(zone).forEach(row -> zones.getChildren().add(new RowView(row)))));
    }

    private List<Row> rows(ZoneSun zone) {
        return new Rows(zone.accounts(), "", session.units().get())
                .add(zone.name(), hours(zone.meanHours()), "meanHours")
                .add("   morning", hours(zone.morningHours()), "")
                .add("   afternoon", hours(zone.afternoonHours()), "")
                .list();
    }

    private Formatted hours(double hours) {
        return Formatting.format(Measure.TIME_HOURS, hours, session.units().get(), 1);
    }
}
