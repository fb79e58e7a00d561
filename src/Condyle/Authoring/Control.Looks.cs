using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>How a control is shown to an animator.</summary>
public readonly partial record struct Control
{
    /// <summary>Shows the control by an outline. Without it the outline goes by what an animator may do with the control, and its size by that of the skeleton.</summary>
    /// <param name="shape">The outline.</param>
    /// <param name="size">How wide it is, in metres.</param>
    /// <param name="facing">The axis of the control's own frame that the outline lies across.</param>
    /// <returns>The control.</returns>
    /// <exception cref="ArgumentException">The size isn't above zero, or the shape or the axis is none.</exception>
    [OverloadResolutionPriority(1)]
    public Control Shaped(ControlShape shape, float size = 0.1f, Axis facing = Axis.Y, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Shaped(shape, size, facing, Draft.Place(file, line));

    /// <inheritdoc cref="Shaped(ControlShape, float, Axis, string, int)"/>
    public Control Shaped(ControlShape shape) => Shaped(shape, 0.1f, Axis.Y, PlaceId.None);

    internal Control Shaped(Fact<ControlShape> shape, PlaceId place) => Shaped(shape, 0.1f, Axis.Y, place);

    internal Control Shaped(Fact<ControlShape> shape, Fact<float> size, Fact<Axis> facing, PlaceId place)
    {
        Given.AShape(shape);
        Given.AnAxis(facing);
        Given.Finite(size, $"The size of '{NameFact}'");
        if (size.TryKnown(out var metres) && metres <= 0)
            throw new ArgumentException($"The size of '{NameFact}' is {Invariant.Print(metres)}. Give metres above zero.");
        Draft.Record(new ShapeSet(place, Id, shape, size, facing));
        return this;
    }

    /// <summary>Shows the control in a colour; without it, in the colour of its layer.</summary>
    /// <param name="tint">The colour.</param>
    /// <returns>The control.</returns>
    /// <exception cref="ArgumentException">The tint is none.</exception>
    [OverloadResolutionPriority(1)]
    public Control Tinted(Tint tint, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Tinted(tint, Draft.Place(file, line));

    /// <inheritdoc cref="Tinted(Tint, string, int)"/>
    public Control Tinted(Tint tint) => Tinted(tint, PlaceId.None);

    internal Control Tinted(Fact<Tint> tint, PlaceId place)
    {
        Given.ATint(tint);
        Draft.Record(new TintSet(place, Id, tint));
        return this;
    }

    /// <summary>Puts the control on a layer: a set of controls that are shown together.</summary>
    /// <param name="layer">The layer's name, for instance <c>face</c>.</param>
    /// <returns>The control.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [OverloadResolutionPriority(1)]
    public Control OnLayer(string layer, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => OnLayer(layer, Draft.Place(file, line));

    /// <inheritdoc cref="OnLayer(string, string, int)"/>
    public Control OnLayer(string layer) => OnLayer(layer, PlaceId.None);

    internal Control OnLayer(Text layer, PlaceId place)
    {
        Given.AName(layer, $"The layer of '{NameFact}'", "face");
        Draft.Record(new LayerSet(place, Id, layer));
        return this;
    }
}
