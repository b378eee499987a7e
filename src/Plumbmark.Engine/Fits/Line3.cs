namespace Plumbmark.Engine.Fits;

/// <summary>A straight line in space, for example a rod through an eye.</summary>
/// <param name="Point">A place on the line, metres.</param>
/// <param name="Direction">Unit direction along it; its sense carries no meaning.</param>
public sealed record Line3(Vector3 Point, Vector3 Direction)
{
    /// <summary>Distance of a place from the line, metres, never negative.</summary>
    public double Distance(Vector3 place) => Vector3.Cross(Direction, place - Point).Norm;

    /// <summary>How far along <see cref="Direction"/> the nearest place of the line lies from <see cref="Point"/>, metres.</summary>
    public double Station(Vector3 place) => Vector3.Dot(Direction, place - Point);
}
