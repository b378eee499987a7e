using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Road;

/// <summary>A steering box with drop arm, idler and centre link, both shafts upright. Places are in the car's axes, straight ahead; the drop arm may be on either side.</summary>
/// <param name="DropArmShaft">A place on the drop arm's shaft.</param>
/// <param name="DropArmJoint">The centre link's joint on the drop arm.</param>
/// <param name="IdlerShaft">A place on the idler's shaft.</param>
/// <param name="IdlerJoint">The centre link's joint on the idler.</param>
/// <param name="RodsOnArms">Whether the track rods' inner joints are on the drop arm and the idler; otherwise they are on the centre link.</param>
public sealed record SteeringBoxDrawing(Place? DropArmShaft, Place? DropArmJoint, Place? IdlerShaft, Place? IdlerJoint, bool RodsOnArms);
