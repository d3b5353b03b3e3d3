package loamline.desk.tool;

import java.util.List;

/** The bare hand: means nothing by any input, so the map pans, zooms and picks. */
public record Hand() implements Tool {
    @Override
    public Step on(Input input, Surroundings around) {
        return Step.pass(this);
    }

    @Override
    public List<Guide> guides(Surroundings around) {
        return List.of();
    }

    @Override
    public String hint() {
        return "";
    }

    @Override
    public Pointer cursor() {
        return Pointer.ARROW;
    }
}
