using Condyle.Analyzers.Reporting;
using Condyle.Model;
using Condyle.Naming;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>A limb that is said in primitives: what it is made of, and what it is called.</summary>
internal sealed class SaidLimb
{
    private static readonly HashSet<string> Verbs =
    [
        nameof(Control.Under), nameof(Control.PlacedAt), nameof(Control.Lock), nameof(Control.Switch), nameof(Control.Dial), nameof(Switch.AlsoOn), nameof(Chain.Copy), nameof(Chain.PolePoint),
        nameof(Drive.ByMatrix), nameof(Drive.ByChannels), nameof(TwoBone.Reach), nameof(TwoBone.Face), nameof(TwoBone.Stretching), nameof(TwoBone.Softening), nameof(TwoBone.TurningPlane),
        nameof(ChainBlend.From), nameof(Label.ShownBy),
    ];

    private readonly Sayings said;
    private readonly HashSet<int> parts = [];

    private SaidLimb(Sayings said) => this.said = said;

    /// <summary>The event that says what carries its root, and those of the group that holds its parts and of what its goal hangs under.</summary>
    public (int Under, int Systems, int Space) Parents { get; private set; }

    /// <summary>What is called after it, without the side, and the side.</summary>
    public string Name { get; private set; } = "";

    public Side Side { get; private set; } = Side.Left;

    /// <summary>What differs from the recipe's defaults, as members of its options.</summary>
    public IReadOnlyList<string> Options { get; private set; } = [];

    /// <summary>The handles that the recipe gives back, by their elements.</summary>
    public IReadOnlyDictionary<int, string> Handles { get; private set; } = new Dictionary<int, string>();

    /// <summary>Whether an event makes a part of it.</summary>
    public bool Makes(int id) => parts.Contains(id);

    /// <summary>Whether an event says what the recipe would say.</summary>
    public bool Says(int id) =>
        said.Log[id] is CopyJointMade joint ? parts.Contains(joint.Copy)
        : said.Log[id].SaidIn(said.Log) is { } saying && (parts.Contains(id) || (!saying.Makes && saying.Of is { } of && parts.Contains(of) && Verbs.Contains(saying.Verb)));

    /// <summary>The limb around a blend; none where there is none, or something of it isn't known.</summary>
    public static SaidLimb? Around(int blend, Sayings said, Conventions conventions)
    {
        var limb = new SaidLimb(said);
        var copies = said.Events(blend, nameof(ChainBlend.From)).Select(from => (said.Given(from, 0) as Saying.Element)?.Id).OfType<int>().ToList();
        if (copies.Count != 2 || copies.FindIndex(copy => said.About(nameof(RigDraft.TwoBone), copy).Count == 1) is not (>= 0 and var solved))
            return null;
        var (ik, fk, solver) = (copies[solved], copies[1 - solved], said.About(nameof(RigDraft.TwoBone), copies[solved])[0]);
        if (said.Element(solver, nameof(TwoBone.Reach)) is not { } goal || said.Element(solver, nameof(TwoBone.Face)) is not { } pole || said.Element(ik, nameof(Copy.Under)) is not { } group
            || said.About(nameof(RigDraft.Drive), group) is not [var carried] || said.Element(carried, nameof(Drive.ByMatrix)) is not { } root
            || said.Event(root, nameof(Control.Under)) is not { } under || said.Event(group, nameof(Group.Under)) is not { } systems || said.Event(goal, nameof(Control.Under)) is not { } space
            || SwitchOf(said, blend, fk) is not { } amount || said.Element(pole, nameof(Control.PlacedAt)) is not { } spot)
            return null;
        limb.parts.UnionWith([blend, ik, fk, solver, goal, pole, group, carried, root, amount, spot]);
        limb.TakeTurns(fk);
        var labels = limb.TakeLabels(amount);
        limb.Parents = (under, systems, space);
        limb.Handles = new Dictionary<int, string>
        {
            [root] = nameof(Limb.Root),
            [goal] = nameof(Limb.Goal),
            [pole] = nameof(Limb.Pole),
            [amount] = nameof(Limb.Fk),
            [ik] = nameof(Limb.IkCopy),
            [fk] = nameof(Limb.FkCopy),
            [solver] = nameof(Limb.Solver),
            [group] = nameof(Limb.Parts),
        };
        return limb.TakeName(root, conventions) && limb.TakeOptions(goal, pole, spot, solver, amount, labels, conventions) ? limb : null;
    }

    private static int? SwitchOf(Sayings said, int blend, int fk)
    {
        var from = said.Events(blend, nameof(ChainBlend.From)).First(each => (said.Given(each, 0) as Saying.Element)?.Id == fk);
        return said.Given(from, 1) is Fact<WeightPolynomial> weight && weight.TryKnown(out var known) && known.Switches is [var only] && known.Equals(WeightPolynomial.Variable(only)) && said.Log[only] is SwitchAdded ? only : null;
    }

    private void TakeTurns(int fk)
    {
        for (var joint = fk + 1; joint < said.Log.Count && said.Log[joint] is CopyJointMade made && made.Copy == fk; joint++)
        {
            foreach (var drive in said.About(nameof(RigDraft.Drive), joint))
            {
                parts.Add(drive);
                if (said.Element(drive, nameof(Drive.ByChannels)) is { } turn)
                    parts.Add(turn);
            }
        }
    }

    private bool TakeLabels(int amount)
    {
        var labels = Enumerable.Range(0, said.Log.Count).Where(id => said.Log[id] is LabelAdded && said.Event(id, nameof(Label.ShownBy)) is { } shown
            && said.Given(shown, 0) is Fact<WeightPolynomial> weight && weight.TryKnown(out var known) && known.Switches is [var only] && only == amount).ToList();
        parts.UnionWith(labels);
        return labels.Count > 0;
    }

    private bool TakeName(int root, Conventions conventions)
    {
        if (Plain(root, conventions) is not (var name, var side) || !name.EndsWith("_root", StringComparison.Ordinal))
            return false;
        (Name, Side) = (name.Substring(0, name.Length - "_root".Length), side);
        return true;
    }

    private bool TakeOptions(int goal, int pole, int spot, int solver, int amount, bool hasLabels, Conventions conventions)
    {
        if (Plain(goal, conventions) is not (var goalName, _) || Plain(pole, conventions) is not (var poleName, _) || said.Log[spot] is not PolePointAsked
            || !Number(said.Given(spot, 0), out var distance) || !((INamedEvent)said.Log[amount]).Name.TryKnown(out var switched) || !Number(said.Given(amount, 1), out var atRest))
            return false;
        var (options, defaults) = (new List<string>(), new LimbOptions());
        void Add(bool differs, string member, string value)
        {
            if (differs)
                options.Add($"{member} = {value}");
        }

        Add(goalName != Name + "_goal", nameof(LimbOptions.Goal), $"\"{goalName}\"");
        Add(poleName != Name + "_pole", nameof(LimbOptions.Pole), $"\"{poleName}\"");
        Add(distance != defaults.PoleDistance, nameof(LimbOptions.PoleDistance), NumberCode.Of(distance));
        Add(switched != defaults.Switch, nameof(LimbOptions.Switch), $"\"{switched}\"");
        Add(atRest != 0, nameof(LimbOptions.StartsInFk), "true");
        if (said.Event(solver, nameof(TwoBone.Stretching)) is { } stretching)
        {
            if (said.Given(stretching, 0) is not Fact<WeightPolynomial> weight || !weight.TryKnown(out var known) || known.Switches is not [var stretch] || !Number(said.Given(stretching, 1), out var most))
                return false;
            parts.Add(stretch);
            Add(true, nameof(LimbOptions.Stretches), "true");
            Add(most != defaults.MostStretch, nameof(LimbOptions.MostStretch), NumberCode.Of(most));
        }

        if (said.Event(solver, nameof(TwoBone.Softening)) is { } softening && Number(said.Given(softening, 0), out var softness))
            Add(true, nameof(LimbOptions.Softness), NumberCode.Of(softness));
        if (said.Element(solver, nameof(TwoBone.TurningPlane)) is { } dial)
        {
            parts.Add(dial);
            Add(true, nameof(LimbOptions.TurnsPlane), "true");
        }

        if (said.Element(goal, nameof(Control.PlacedAt)) is { } at && said.Log[at] is PointBesideAsked)
        {
            parts.Add(at);
            Add(true, nameof(LimbOptions.GoalAlongWorld), "true");
        }

        Add(!hasLabels, nameof(LimbOptions.HasLabels), "false");
        Options = options;
        return true;
    }

    private (string Name, Side Side)? Plain(int id, Conventions conventions) => said.Log[id] is INamedEvent named && SidedName.Of(named.Name, conventions) is { } sided
        && sided.MarkAt + conventions.MarkOf(sided.Side).Length == sided.Name.Length ? (sided.Name.Substring(0, sided.MarkAt), sided.Side) : null;

    private static bool Number(object? given, out float number)
    {
        number = 0;
        return given is Fact<float> fact && fact.TryKnown(out number);
    }
}
