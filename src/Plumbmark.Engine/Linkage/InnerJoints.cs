namespace Plumbmark.Engine.Linkage;

/// <summary>Where the track rods' inner joints stand for one steering input; car axes (y to the left), metres.</summary>
/// <param name="Left">Left inner joint.</param>
/// <param name="Right">Right inner joint.</param>
/// <param name="Reach">Whether the linkage reaches this input; the joints mean nothing when it does not.</param>
public readonly record struct InnerJoints(Vector3 Left, Vector3 Right, Reach Reach);
