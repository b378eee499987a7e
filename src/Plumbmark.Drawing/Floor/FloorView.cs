namespace Plumbmark.Drawing.Floor;

/// <summary>From where the frame is looked at.</summary>
public enum FloorView
{
    /// <summary>From above: front up the page, the car's own left on the left.</summary>
    Plan,

    /// <summary>From the car's left: front to the left, up is up.</summary>
    Side,
}
