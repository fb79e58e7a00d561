using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Compilation;

/// <summary>
/// Gives each value beside the channels its slot: the switches, the dials and the options of the choices, which an animator sets, and the measured angles.
/// </summary>
internal sealed class InputTable
{
    private readonly Dictionary<int, int> slots = [];
    private readonly List<float> atRest = [];
    private readonly List<int> firstOptions = [];

    public InputTable(RigModel model)
    {
        Add(model.Switches);
        FirstDial = atRest.Count;
        Add(model.Dials);
        foreach (var choice in model.Choices)
        {
            firstOptions.Add(atRest.Count);
            Add(choice.Options);
        }

        Add(model.Measures);
    }

    public int FirstDial { get; }

    /// <summary>By the index of the choice.</summary>
    public IReadOnlyList<int> FirstOptions => firstOptions;

    public IReadOnlyList<float> AtRest => atRest;

    /// <summary>The slot of a switch, a dial, an option or a measured angle.</summary>
    public int SlotOf(int id) => slots[id];

    private void Add(IEnumerable<RigElement> values)
    {
        foreach (var value in values)
        {
            slots[value.Id] = atRest.Count;
            atRest.Add((float)Pose.RestOf(value));
        }
    }
}
