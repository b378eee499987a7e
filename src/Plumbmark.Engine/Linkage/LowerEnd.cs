namespace Plumbmark.Engine.Linkage;

/// <summary>
/// What joins the upright to the lower arm. <c>default</c> is a ball joint. A trunnion turns on a pin across the arm's end, parallel to the arm's pivot line, and the upright
/// screws into it: it may stand off the pin, and it creeps along its thread as the wheel is steered.
/// </summary>
/// <param name="OffsetMetres">How far outboard of the pin's middle the steering axis passes, metres; zero for a ball joint.</param>
/// <param name="LeadMetresPerTurn">
/// How much further the upright stands out of the trunnion after one turn of toe-out steer (the front of the wheel swinging outboard), metres per turn; negative for the other hand of
/// thread; zero for a plain bush or a ball joint.
/// </param>
public readonly record struct LowerEnd(double OffsetMetres, double LeadMetresPerTurn)
{
    /// <summary>Whether the joint acts as a plain ball joint at the lower point: no offset and no thread.</summary>
    public bool ActsAsBallJoint => OffsetMetres == 0 && LeadMetresPerTurn == 0;
}
