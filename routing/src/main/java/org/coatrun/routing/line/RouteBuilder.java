package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.routing.network.HosePath;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.shape.Vec2;

/** Puts the legs of a route together from the choices of a cover. */
final class RouteBuilder {

  private final LineRequest request;
  private final Sites sites;
  private final LineModel model;
  private final Laying laying;

  RouteBuilder(LineRequest request, Sites sites, LineModel model) {
    this.request = request;
    this.sites = sites;
    this.model = model;
    this.laying = new Laying(request.limits());
  }

  /** The line by an option to an outlet of a floor of the class, and from there to a point. */
  Route route(LineOption option, FloorClass c, int floor, int outlet, Vec2 at) {
    var legs = new ArrayList<Leg>(upTo(option, c, floor));
    if (outlet != model.ways().start(option, c.outlets())) {
      HosePath pipe = c.outlets().pipe(model.ways().pipeFrom(option, c), outlet).orElseThrow();
      legs.add(laying.pipe(floor, pipe));
    }
    HosePath hose = c.outlets().hosePath(outlet, sites.of(floor).target(at)).orElseThrow();
    legs.add(laying.hose(floor, hose));
    legs.add(laying.whip(floor, hose.points().get(hose.points().size() - 1)));
    return new Route(legs);
  }

  /** The line from the machine to where it comes out on the floor. */
  List<Leg> upTo(LineOption option, FloorClass c, int floor) {
    var legs = new ArrayList<>(option.ground().legs());
    if (option.riser().isPresent()) {
      Vec2 foot = end(legs);
      Vec2 top = c.outlets().point(c.outlets().atRiser(option.riser().get()));
      legs.add(
          laying.rise(
              option.pipeRises(),
              option.from(),
              foot,
              top,
              Math.abs(model.ways().rise(option, floor)),
              model.ways().beside(option, floor, c.outlets())));
    }
    return legs;
  }

  LineRequest request() {
    return request;
  }

  private static Vec2 end(List<Leg> legs) {
    List<Vec2> path = legs.get(legs.size() - 1).path();
    return path.get(path.size() - 1);
  }
}
