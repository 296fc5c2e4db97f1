package tankyard.engine.takeoff;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.catalog.csv.CatalogFiles;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Status;
import tankyard.engine.leasefile.LeaseFiles;

/** A lease, a catalogue and a price list that are small enough to count by hand. */
public final class SmallBattery {
  private static final double METRES_PER_FOOT = 0.3048;

  private static final Map<String, String> FILES =
      Map.of(
          "sources.csv",
          "key,citation\nt,for the test\n",
          "poly-pipe.csv",
          """
          id,name,nominal_in,dr,outside_in,bore_in,stress_psi,roughness_ft,hazen_williams_c,sold_by,piece_ft,source,provenance
          poly-2,2 in poly,2,11,2.375,1.917,1000,0.000005,150,roll,500,t,memory
          poly-3,3 in poly,3,11,3.5,2.826,1000,0.000005,150,joint,40,t,memory
          """,
          "fittings.csv",
          """
          id,name,part,material,nominal_in,l_over_d,k,k1,source,provenance
          elbow-90,Elbow,elbow-90,,,30,,,t,memory
          exit,Exit,exit,,,,1,,t,memory
          elbow-90-poly-2,2 in poly elbow,elbow-90,polyethylene,2,30,,,t,memory
          union-2,2 in union,union,steel,2,,0.1,,t,memory
          nipple-2,2 in nipple,nipple,steel,2,,0,,t,memory
          elbow-90-steel-2,2 in steel elbow,elbow-90,steel,2,30,,,t,memory
          transition-2,2 in transition,transition,polyethylene,2,,0.1,,t,memory
          coupling-2,2 in poly coupling,coupling,polyethylene,2,,0.1,,t,memory
          tee-2,2 in poly tee,tee,polyethylene,2,20,,,t,memory
          """,
          "valves.csv",
          """
          id,name,duty,nominal_in,cv,port_in,lever,l_over_d,k,k1,rating_psi,source,provenance
          ball-2,2 in ball valve,ball,2,,,,3,,,600,t,memory
          ball-hp-2,2 in forged ball valve,ball,2,,,,3,,,2000,t,memory
          check-2,2 in check valve,check,2,,,,50,,,200,t,memory
          relief-2,2 in relief valve,relief,2,,,,,,,150,t,memory
          """,
          "tanks.csv",
          """
          id,name,material,nominal_bbl,diameter_ft,shell_ft,overflow_ft,source,provenance
          tank-210,210 bbl tank,steel,210,10,15,14.5,t,memory
          """,
          "sundries.csv",
          """
          id,name,nature,source,provenance
          trench-foot,Trench,work,t,memory
          crew-day,Crew day,work,t,memory
          thief-hatch,Thief hatch,goods,t,memory
          """,
          "prices.csv",
          """
          item,basis,price,currency,date,vendor,invented
          poly-2,foot,1.00,USD,2026-06-01,Store,yes
          tank-210,each,9000,USD,2024-06-01,Store,yes
          trench-foot,foot,2.50,USD,2026-06-01,Store,yes
          crew-day,day,1000,USD,2026-06-01,Store,yes
          union-2,each,10,USD,2026-06-01,Store,yes
          ball-2,each,40,CAD,2026-06-01,Store,yes
          """);

  private SmallBattery() {}

  private static CatalogFiles files() {
    return CatalogFiles.of(
        name ->
            Optional.ofNullable(FILES.get(name))
                .map(t -> new ByteArrayInputStream(t.getBytes(StandardCharsets.UTF_8))));
  }

  public static Catalog catalog() {
    return files().catalog();
  }

  public static PriceList prices() {
    return files().prices();
  }

  /** Wells W1 and W2 to a tee, one line on to a separator, an oil leg to a tank. */
  public static Lease lease() {
    try {
      return LeaseFiles.read(
          "small", SmallBattery.class.getResourceAsStream("small-battery.lease.json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** FL1 480 ft, FL2 520 ft, FL3 1,000 ft, OL 60 ft. */
  public static double metres(Line line) {
    double feet =
        switch (line.id()) {
          case "FL1" -> 480;
          case "FL2" -> 520;
          case "FL3" -> 1000;
          default -> 60;
        };
    return feet * METRES_PER_FOOT;
  }

  /** The same, with everything there already. */
  public static Lease allThere() {
    Lease lease = lease();
    for (var thing : lease.things().toList()) {
      lease = lease.with(thing.withStatus(Status.HAVE));
    }
    for (Line line : lease.lines()) {
      lease = lease.with(line.withStatus(Status.HAVE));
    }
    return lease;
  }
}
