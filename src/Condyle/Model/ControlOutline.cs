namespace Condyle.Model;

/// <summary>The outline of a control: its width in metres, and the axis of the control's frame that it lies across.</summary>
internal sealed record ControlOutline(Fact<ControlShape> Shape, Fact<float> Size, Fact<Axis> Facing)
{
    public override string ToString() => $"{Shape} {Size} across {Facing}";
}
