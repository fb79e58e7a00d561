using Condyle.Model;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>Writes a stretch of a rig's log as the sentences that say it: what a recipe has said, without knowing the recipe.</summary>
internal sealed class SaidCode
{
    private readonly EventLog log;
    private readonly string rig;
    private readonly IReadOnlyDictionary<int, string> known;
    private readonly SaidValues values;
    private readonly LocalNames names;
    private readonly Dictionary<int, int> uses = [];
    private readonly List<Sentence> sentences = [];
    private readonly Dictionary<int, Sentence> makers = [];

    private SaidCode(EventLog log, string rig, IReadOnlyDictionary<int, string> known, SaidValues values, LocalNames names)
    {
        (this.log, this.rig, this.known, this.values, this.names) = (log, rig, known, values, names);
    }

    /// <summary>The statements, in order.</summary>
    public IEnumerable<string> Statements => sentences.Select(sentence => $"{(sentence.Local is { } local ? $"var {local} = " : "")}{sentence.Code};");

    /// <summary>What events from one up to another say; none where code has no way to say it.</summary>
    /// <param name="log">The log.</param>
    /// <param name="first">The first event.</param>
    /// <param name="last">The event behind the last one.</param>
    /// <param name="rig">The draft, as the code calls it.</param>
    /// <param name="known">What was there before, by the expressions that lead to it.</param>
    /// <param name="wanted">What the code goes on to use.</param>
    /// <param name="values">Writes plain values.</param>
    /// <param name="names">Names locals.</param>
    public static SaidCode? Of(EventLog log, int first, int last, string rig, IReadOnlyDictionary<int, string> known, IEnumerable<int> wanted, SaidValues values, LocalNames names)
    {
        var code = new SaidCode(log, rig, known, values, names);
        foreach (var id in wanted)
            code.Use(id, times: 2);
        for (var id = first; id < last; id++)
        {
            foreach (var used in code.UsedBy(id))
                code.Use(used, times: 1);
        }

        for (var id = first; id < last; id++)
        {
            if (log[id] is not (CopyJointMade or ChoiceAdded or OptionAdded) && !code.Say(id))
                return null;
        }

        return wanted.All(id => code.ExpressionOf(id) is not null) ? code : null;
    }

    /// <summary>How the code says an element; none where it has no way to.</summary>
    public string? ExpressionOf(int id)
    {
        if (known.TryGetValue(id, out var before))
            return before;
        if (log[id] is CopyJointMade joint)
            return ExpressionOf(joint.Copy) is { } copy && ExpressionOf(joint.Original) is { } original ? $"{copy}.{nameof(Copy.Of)}({original})" : null;
        if (log[id] is JointDeclared)
            return InChain(id);
        return makers.TryGetValue(id, out var sentence) ? sentence.Local ??= names.For(log[id]) : null;
    }

    /// <summary>A joint that only a chain leads to.</summary>
    private string? InChain(int joint)
    {
        foreach (var chain in makers.Keys)
        {
            if (log[chain] is ChainDeclared { Joints: { } joints } && joints.Contains(joint))
                return $"{ExpressionOf(chain)}[{joints.ToList().IndexOf(joint)}]";
        }

        return null;
    }

    private void Use(int id, int times)
    {
        var element = log[id] is CopyJointMade joint ? joint.Copy : id;
        uses[element] = uses.TryGetValue(element, out var count) ? count + times : times;
    }

    private IEnumerable<int> UsedBy(int id)
    {
        if (log[id].SaidIn(log) is not { } saying)
            return [];
        return saying.Given.SelectMany(given => given switch
        {
            Saying.Element element => [element.Id],
            Saying.Set set => set.Joints,
            Fact<WeightPolynomial> weight when weight.TryKnown(out var polynomial) => polynomial.Switches,
            _ => (IEnumerable<int>)[],
        });
    }

    private bool Say(int id)
    {
        if (log[id].SaidIn(log) is not { } saying || Arguments(saying) is not { } arguments)
            return false;
        var call = $".{saying.Verb}({arguments})";
        if (saying.Of is { } of && !saying.Makes && sentences.Count > 0 && sentences[sentences.Count - 1] is var last && last.Element == of)
        {
            last.Code += call;
            return true;
        }

        if ((saying.Of is { } owner ? Narrowed(owner, id) ?? ExpressionOf(owner) : rig) is not { } head)
            return false;
        var sentence = new Sentence(saying.Makes ? id : saying.Of!.Value, head + call);
        sentences.Add(sentence);
        if (saying.Makes)
            makers[id] = sentence;
        return true;
    }

    private string? Arguments(Saying saying)
    {
        var said = new List<string>();
        var isInOrder = true;
        foreach (var given in saying.Given)
        {
            var (value, parameter) = given is Saying.Left left ? (left.Value, left.Parameter) : (given, null);
            if (given is Saying.Left optional && SaidValues.IsDefault(optional.Value, optional.Default))
            {
                isInOrder = false;
                continue;
            }

            if (Argument(value) is not { } code)
                return null;
            said.Add(isInOrder || parameter is null ? code : $"{parameter}: {code}");
        }

        return string.Join(", ", said);
    }

    private string? Argument(object? given) => given switch
    {
        Saying.Element element => Inlined(element.Id) ?? ExpressionOf(element.Id),
        Saying.Set set => Joints(set),
        Fact<WeightPolynomial> weight => weight.TryKnown(out var known)
            ? SaidWeight.Of(known, id => (known.Switches.Count == 1 ? Inlined(id) : null) ?? ExpressionOf(id))
            : null,
        _ => values.Of(given),
    };

    /// <summary>What was made just before and for this alone is said in its place.</summary>
    private string? Inlined(int id)
    {
        if (!makers.TryGetValue(id, out var sentence) || sentence.Local is not null || uses[id] != 1 || sentences[sentences.Count - 1] != sentence)
            return null;
        return TakenBack(id, sentence);
    }

    /// <summary>A chain of which only a part is used is said with that part.</summary>
    private string? Narrowed(int whole, int part) =>
        log[part] is ChainDeclared && !uses.ContainsKey(whole) && makers.TryGetValue(whole, out var sentence) && sentence.Local is null && sentences[sentences.Count - 1] == sentence
            ? TakenBack(whole, sentence)
            : null;

    private string TakenBack(int id, Sentence sentence)
    {
        sentences.Remove(sentence);
        makers.Remove(id);
        return sentence.Code;
    }

    private string? Joints(Saying.Set set)
    {
        var joints = set.Joints.Select(ExpressionOf).ToList();
        return joints.Contains(null) ? null : joints.Count == 1 ? joints[0] : $"new {nameof(JointSet)}({string.Join(", ", joints)})";
    }

    private sealed class Sentence(int element, string code)
    {
        public int Element => element;

        public string Code { get; set; } = code;

        public string? Local { get; set; }
    }
}
