namespace Plumbmark.Inspection.Road;

/// <summary>One front wheel at one height. Radians and metres; angles as <see cref="FigureKind"/> says.</summary>
/// <param name="TravelMetres">How far the wheel centre stands above ride height, the steering straight ahead.</param>
/// <param name="Camber">Camber.</param>
/// <param name="ToeIn">Toe-in: the bump steer curve.</param>
/// <param name="Castor">Castor.</param>
/// <param name="KingPin">King-pin inclination.</param>
/// <param name="OutboardMetres">How far the wheel centre has moved outboard from ride height: half the track change.</param>
/// <param name="ForwardMetres">How far it has moved forward: the wheelbase change.</param>
/// <param name="RollCentreMetres">Height of the roll centre above the road if the other side did the same; null when the loaded radius is not told.</param>
/// <param name="ScrubRadiusMetres">Scrub radius, positive when the steering axis meets the road inboard of the tyre's middle; null when the loaded radius is not told.</param>
/// <param name="TrailMetres">Trail, positive when it meets the road ahead of the tyre's middle; null when the loaded radius is not told.</param>
public sealed record CurvePoint(
    double TravelMetres,
    double Camber,
    double ToeIn,
    double Castor,
    double KingPin,
    double OutboardMetres,
    double ForwardMetres,
    double? RollCentreMetres,
    double? ScrubRadiusMetres,
    double? TrailMetres
);
