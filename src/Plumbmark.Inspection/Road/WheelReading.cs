using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Road;

/// <summary>One reading of the wheel check after assembly, as a person took it. Never changed: a correction is a new reading with a reason.</summary>
/// <param name="Id">Its own name, so that it may be sent twice and is kept once.</param>
public abstract record WheelReading(string Id)
{
    /// <summary>Standard uncertainty of each length in it; null for the usual half millimetre of a rule against a string.</summary>
    public Length? Sigma { get; init; }

    /// <summary>Standard uncertainty of each angle in it; null for the usual tenth of a degree of a digital level.</summary>
    public Angle? SigmaAngle { get; init; }

    /// <summary>Whether the wheel had been rolled half a turn from where it was first read, so that the rim's run-out cancels.</summary>
    public bool HalfTurn { get; init; }

    /// <summary>Anything noted; null when nothing.</summary>
    public string? Note { get; init; }

    /// <summary>Why it was taken back; null while it stands.</summary>
    public string? Withdrawn { get; init; }

    /// <summary>A plumb line outboard of a wheel: level distances to the rim's top and bottom edges.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Wheel">The wheel.</param>
    /// <param name="Top">Line to the top edge.</param>
    /// <param name="Bottom">Line to the bottom edge.</param>
    /// <param name="Span">Between the two edges, along the rim.</param>
    public sealed record PlumbLine(string Id, WheelPlace Wheel, Length Top, Length Bottom, Length Span) : WheelReading(Id);

    /// <summary>Camber read directly, with a level against the rim.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Wheel">The wheel.</param>
    /// <param name="Camber">Positive with the top outward.</param>
    public sealed record Level(string Id, WheelPlace Wheel, Angle Camber) : WheelReading(Id);

    /// <summary>A string along one side: distances, square to it at hub height, to the rim's front and rear edges, and to the hub.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Wheel">The wheel.</param>
    /// <param name="Front">String to the front edge.</param>
    /// <param name="Rear">String to the rear edge.</param>
    /// <param name="Span">Between the two edges, along the rim.</param>
    /// <param name="Hub">String to the hub's outer face; null when not read.</param>
    public sealed record StringGaps(string Id, WheelPlace Wheel, Length Front, Length Rear, Length Span, Length? Hub) : WheelReading(Id);

    /// <summary>How far the two side strings are apart, ahead of the car and behind it.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Ahead">Apart ahead of the front wheels.</param>
    /// <param name="Behind">Apart behind the rear wheels.</param>
    /// <param name="Between">How far apart along the car the two were measured.</param>
    public sealed record Strings(string Id, Length Ahead, Length Behind, Length Between) : WheelReading(Id);

    /// <summary>A pair of wheels measured across, ahead of and behind the axle.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Axle">Which pair.</param>
    /// <param name="Ahead">Apart ahead of the axle.</param>
    /// <param name="Behind">Apart behind it.</param>
    /// <param name="Diameter">The diameter at which it was measured.</param>
    /// <param name="AtTread">At a line scribed on the tread; otherwise at the rim.</param>
    public sealed record Across(string Id, Axle Axle, Length Ahead, Length Behind, Length Diameter, bool AtTread) : WheelReading(Id);

    /// <summary>Camber read straight ahead and with the wheel turned both ways.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Wheel">A front wheel.</param>
    /// <param name="Ahead">Camber straight ahead.</param>
    /// <param name="OutTurn">How far the front of the wheel was swung outboard.</param>
    /// <param name="OutCamber">Camber there.</param>
    /// <param name="InTurn">How far it was swung inboard.</param>
    /// <param name="InCamber">Camber there.</param>
    public sealed record Swing(string Id, WheelPlace Wheel, Angle Ahead, Angle OutTurn, Angle OutCamber, Angle InTurn, Angle InCamber)
        : WheelReading(Id);

    /// <summary>Ride height: a named place on the car above its pad or the floor.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Wheel">At which corner.</param>
    /// <param name="Value">The height.</param>
    public sealed record RideHeight(string Id, WheelPlace Wheel, Length Value) : WheelReading(Id);

    /// <summary>Hub to hub along one side.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Side">The side.</param>
    /// <param name="Value">Front hub to rear hub.</param>
    public sealed record Wheelbase(string Id, Side Side, Length Value) : WheelReading(Id);

    /// <summary>The height of the pad under one wheel, by the water level.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Wheel">The wheel.</param>
    /// <param name="Value">Up is positive.</param>
    public sealed record Pad(string Id, WheelPlace Wheel, Length Value) : WheelReading(Id);
}
