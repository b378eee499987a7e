using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Car;

/// <summary>Three coordinates of which any may be missing; missing is not zero.</summary>
/// <param name="X">Forward.</param>
/// <param name="Y">To the car's left.</param>
/// <param name="Z">Up.</param>
public sealed record Place(Length? X, Length? Y, Length? Z);
