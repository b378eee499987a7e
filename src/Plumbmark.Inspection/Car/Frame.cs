namespace Plumbmark.Inspection.Car;

/// <summary>The frame's points and the limits that apply to it.</summary>
/// <param name="Points">Every named point, in the order they were drawn.</param>
/// <param name="Limits">The limits; null when none is known.</param>
public sealed record Frame(IReadOnlyList<FramePoint> Points, Limits? Limits = null)
{
    /// <summary>A frame without points.</summary>
    public static Frame Empty { get; } = new([]);

    /// <summary>The point of that name, or null.</summary>
    public FramePoint? Point(string id) => Points.FirstOrDefault(p => p.Id == id);
}
