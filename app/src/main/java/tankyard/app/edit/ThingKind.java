package tankyard.app.edit;

import tankyard.engine.lease.Berm;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Landmark;
import tankyard.engine.lease.PowerPole;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;

/**
 * The kinds of thing a person can put on the map, in the order the fluid meets them; what it never
 * meets comes last.
 */
public enum ThingKind {
  WELL("well", "W"),
  TEE("tee", "T"),
  SEPARATOR("separator", "S"),
  GUN_BARREL("gun barrel", "GB"),
  OIL_TANK("oil tank", "OT"),
  WATER_TANK("water tank", "WT"),
  INJECTION_PUMP("injection pump", "P"),
  INJECTION_WELL("injection well", "IW"),
  POWER_POLE("power pole", "PP"),
  BERM("berm", "BM"),
  LANDMARK("landmark", "LM");

  private final String words;
  private final String letters;

  ThingKind(String words, String letters) {
    this.words = words;
    this.letters = letters;
  }

  /** The trade's word, as {@link Thing#kind()} says it. */
  public String words() {
    return words;
  }

  /** What ids of its kind begin with, as it is chalked on a tank or a tee. */
  public String letters() {
    return letters;
  }

  public static ThingKind of(Thing thing) {
    if (thing instanceof Well) {
      return WELL;
    } else if (thing instanceof Tee) {
      return TEE;
    } else if (thing instanceof Separator) {
      return SEPARATOR;
    } else if (thing instanceof GunBarrel) {
      return GUN_BARREL;
    } else if (thing instanceof Tank tank) {
      return tank.duty() == Tank.Duty.OIL ? OIL_TANK : WATER_TANK;
    } else if (thing instanceof InjectionPump) {
      return INJECTION_PUMP;
    } else if (thing instanceof InjectionWell) {
      return INJECTION_WELL;
    } else if (thing instanceof PowerPole) {
      return POWER_POLE;
    } else if (thing instanceof Berm) {
      return BERM;
    } else if (thing instanceof Landmark) {
      return LANDMARK;
    }
    throw new IllegalArgumentException("Nobody has named the kind of " + thing.kind());
  }
}
