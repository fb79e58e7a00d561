using System.Numerics;

namespace Condyle.Runtime;

/// <summary>What a clip does to a rig: the motion of controls, switches, dials and choices, by their indices.</summary>
internal sealed class RigMotion(CompiledRig rig)
{
    public SortedDictionary<int, Motion<Vector3>> Moves { get; } = [];

    public SortedDictionary<int, Motion<Quaternion>> Turns { get; } = [];

    public SortedDictionary<int, Motion<Vector3>> Scales { get; } = [];

    public SortedDictionary<int, Motion<float>> Switches { get; } = [];

    public SortedDictionary<int, Motion<float>> Dials { get; } = [];

    public SortedDictionary<int, Motion<int>> Choices { get; } = [];

    /// <summary>Finds a clip's names in a rig, and those of the clips that lie over it.</summary>
    public static RigMotion Of(CompiledRig rig, Clip clip)
    {
        var motion = new RigMotion(rig);
        new ClipBinding(rig, clip).Into(motion);
        foreach (var layer in clip.Layers)
            motion.Take(Of(rig, layer.Clip), layer, ControlsOf(rig, clip, layer));
        return motion;
    }

    private static Func<int, bool> ControlsOf(CompiledRig rig, Clip clip, ClipLayer layer)
    {
        if (layer.Under is not { } name)
            return static _ => true;
        var top = rig.Controls.FirstOrDefault(control => control.Name == name)
            ?? throw clip.Wrong($"has a layer under '{name}', which is no control of the rig '{rig.Name}'", "Name a control of the rig", layer.Clip.Name);
        return control => rig.ControlTree.IsUnder(control, top.Index);
    }

    private void Take(RigMotion above, ClipLayer layer, Func<int, bool> isFor)
    {
        Lay(Moves, above.Moves, isFor, _ => Vector3.Zero, _ => Mixes.OfMoves(layer.Blend));
        Lay(Turns, above.Turns, isFor, _ => Quaternion.Identity, _ => Mixes.OfTurns(layer.Blend));
        Lay(Scales, above.Scales, isFor, _ => Vector3.One, _ => Mixes.OfScales(layer.Blend));
        Lay(Switches, above.Switches, sw => IsFor(rig.Switches[sw].Name), sw => rig.Switches[sw].AtRest, sw => Mixes.OfNumbers(layer.Blend, rig.Switches[sw].AtRest));
        Lay(Dials, above.Dials, dial => IsFor(rig.Dials[dial].Name), dial => rig.Dials[dial].AtRest, dial => Mixes.OfNumbers(layer.Blend, rig.Dials[dial].AtRest));
        Lay(Choices, above.Choices, choice => IsFor(rig.Choices[choice].Name), _ => 0, _ => Mixes.OfPicks());

        void Lay<T>(SortedDictionary<int, Motion<T>> below, SortedDictionary<int, Motion<T>> over, Func<int, bool> isTaken, Func<int, T> atRest, Func<int, Mix<T>> mix)
            where T : struct
        {
            foreach (var (index, motion) in over.Where(motion => isTaken(motion.Key)))
                below[index] = new LayeredMotion<T>(below.GetValueOrDefault(index) ?? new Still<T>(atRest(index)), motion, layer, mix(index));
        }

        // A setting belongs to the control that it was made on.
        bool IsFor(string setting) => isFor(rig.ControlIndex(setting[..setting.LastIndexOf('.')]));
    }
}
