namespace Condyle;

/// <summary>The outline by which a control is shown. It lies about the control's origin, across the axis that it faces.</summary>
public enum ControlShape
{
    /// <summary>A circle.</summary>
    Ring,

    /// <summary>A square.</summary>
    Square,

    /// <summary>A square on its tip, with an edge up and down to either side of its plane.</summary>
    Diamond,

    /// <summary>A triangle with equal sides.</summary>
    Triangle,

    /// <summary>A plus.</summary>
    Cross,

    /// <summary>The edges of a cube.</summary>
    Box,
}
