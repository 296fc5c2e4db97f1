package tankyard.app.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import tankyard.app.edit.Delete;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Naming;
import tankyard.app.edit.ViewSettings;
import tankyard.app.field.Drafts;
import tankyard.app.field.FormAction;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Landmark;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Outlined;
import tankyard.engine.lease.PowerPole;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;

/** Makes the page for what is picked. */
final class SheetPages {
  private final LeaseStore store;
  private final ViewSettings view;
  private final Catalog catalog;
  private final Consumer<String> refused;
  private final Drafts drafts = new Drafts();

  /**
   * Pages over one store.
   *
   * @param refused told why a button's edit was not done
   */
  SheetPages(LeaseStore store, ViewSettings view, Catalog catalog, Consumer<String> refused) {
    this.store = store;
    this.view = view;
    this.catalog = catalog;
    this.refused = refused;
  }

  SheetPage page(List<String> ids) {
    if (ids.isEmpty()) {
      return ofLease();
    }
    if (ids.size() > 1) {
      return ofSeveral(ids);
    }
    String id = ids.get(0);
    return store
        .lease()
        .thing(id)
        .map(this::ofThing)
        .or(() -> store.lease().line(id).map(this::ofLine))
        .orElseGet(this::ofLease);
  }

  /**
   * What a page is made of: while this stays the same, the page only needs its new values. A peg
   * more or a float less makes another page.
   */
  List<Object> shape(List<String> ids) {
    Lease lease = store.lease();
    if (ids.size() != 1) {
      return List.of(
          ids,
          lease.cases().stream().map(c -> c.id()).toList(),
          lease.fluids().oilViscosity().size(),
          lease.ownPipes().size());
    }
    Optional<Line> line = lease.line(ids.get(0));
    return List.of(
        ids,
        line.map(l -> l.route().size() + "/" + l.fittings().size()).orElse(""),
        line.map(Line::pipe).orElse(""),
        lease.thing(ids.get(0)).map(SheetPages::shape).orElse(""));
  }

  private static String shape(Thing thing) {
    if (thing instanceof Separator s) {
      return "float " + s.dumpValve().floatBall().isPresent();
    }
    if (thing instanceof Outlined outline) {
      return "corners " + outline.corners().size();
    }
    return thing.kind() + (MotorFields.hasWire(thing) ? " with wire" : "");
  }

  private SheetPage ofLease() {
    SheetForm sheet = sheet("lease", () -> "the lease");
    LeaseSheet.fill(sheet);
    return new SheetPage(sheet.build(), List.of());
  }

  private SheetPage ofThing(Thing thing) {
    SheetForm sheet = sheet(thing.id(), () -> Naming.of(store.lease(), thing.id()));
    fill(sheet, thing);
    return new SheetPage(sheet.build(), deleting(List.of(thing.id())));
  }

  private static void fill(SheetForm sheet, Thing thing) {
    String id = thing.id();
    if (thing instanceof Well) {
      WellSheet.fill(sheet, id);
    } else if (thing instanceof Tee) {
      TeeSheet.fill(sheet, id);
    } else if (thing instanceof Separator separator) {
      SeparatorSheet.fill(sheet, separator);
    } else if (thing instanceof GunBarrel) {
      GunBarrelSheet.fill(sheet, id);
    } else if (thing instanceof Tank tank) {
      TankSheet.fill(sheet, id, tank.duty());
    } else if (thing instanceof InjectionPump) {
      PumpSheet.fill(sheet, id);
    } else if (thing instanceof InjectionWell) {
      InjectionWellSheet.fill(sheet, id);
    } else if (thing instanceof PowerPole) {
      PowerPoleSheet.fill(sheet, id);
    } else if (thing instanceof Berm berm) {
      BermSheet.fill(sheet, berm);
    } else if (thing instanceof Landmark landmark) {
      LandmarkSheet.fill(sheet, landmark);
    }
  }

  private SheetPage ofLine(Line line) {
    SheetForm sheet = sheet(line.id(), () -> Naming.of(store.lease(), line.id()));
    LineSheet.fill(sheet, line, view.units());
    return new SheetPage(sheet.build(), deleting(List.of(line.id())));
  }

  private SheetPage ofSeveral(List<String> ids) {
    SheetForm sheet = sheet("several", () -> ids.size() + " things");
    SeveralSheet.fill(sheet, ids);
    return new SheetPage(sheet.build(), deleting(ids));
  }

  private List<FormAction> deleting(List<String> ids) {
    return List.of(
        new FormAction(
            "sheet-delete",
            ids.size() == 1 ? "Delete" : "Delete all " + ids.size(),
            "Takes it out with the lines that touch it; undo brings it back",
            () -> store.edit(Delete.of(ids))));
  }

  private SheetForm sheet(String subject, Supplier<String> name) {
    return new SheetForm(
        new LeaseHost(store, view), drafts, store, refused, catalog, subject, name);
  }
}
