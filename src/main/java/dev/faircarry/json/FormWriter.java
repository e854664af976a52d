package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Use;

/** Writes the fields of a shared item that depend on its form. */
final class FormWriter implements Form.Cases<ObjectNode> {
  private final ObjectNode out;

  FormWriter(ObjectNode out) {
    this.out = out;
  }

  @Override
  public ObjectNode whole(Form.Whole form) {
    out.put("mass", form.mass().entered());
    TripWriter.massFrom(out, form.massFrom());
    TripWriter.volume(out, "volume", form.volume());
    TripWriter.stow(out, form.stow());
    form.use().ifPresent(use -> out.set("use", TripWriter.evenly(use)));
    TripWriter.contains(out, form.contains());
    return out;
  }

  @Override
  public ObjectNode parts(Form.Parts form) {
    ArrayNode parts = out.putArray("parts");
    for (Form.Part part : form.parts()) {
      ObjectNode one = TripWriter.named(part.id(), part.name());
      one.put("mass", part.mass().entered());
      TripWriter.massFrom(one, part.massFrom());
      TripWriter.volume(one, "volume", part.volume());
      TripWriter.stow(one, part.stow());
      parts.add(one);
    }
    return out;
  }

  @Override
  public ObjectNode counted(Form.Counted form) {
    if (form.quantity() instanceof Form.Quantity.Fixed fixed) {
      out.put("count", fixed.count());
    } else {
      int each = ((Form.Quantity.PerPerson) form.quantity()).countPerDay();
      out.putObject("perPerson").put("countPerDay", each);
    }
    out.put("unitMass", form.unitMass().entered());
    TripWriter.massFrom(out, form.massFrom());
    TripWriter.volume(out, "unitVolume", form.unitVolume());
    TripWriter.stow(out, form.stow());
    form.use().ifPresent(use -> out.set("use", use(use)));
    return out;
  }

  private static ObjectNode use(Use use) {
    if (use instanceof Use.Evenly evenly) {
      return TripWriter.evenly(evenly);
    }
    Use.UnitsPerDay daily = (Use.UnitsPerDay) use;
    ObjectNode out = TripWriter.object();
    out.put("kind", "units-per-day");
    if (daily.perDay() instanceof Use.PerDay.Same same) {
      out.put("perDay", same.units());
    } else if (daily.perDay() instanceof Use.PerDay.Listed listed) {
      ArrayNode days = out.putArray("perDay");
      listed.units().forEach(days::add);
    }
    TripWriter.leaves(out, daily.leaves());
    return out;
  }
}
