using System.Text.RegularExpressions;
using Condyle.Host.Sheets;
using Condyle.Analyzers.Tests.Skeletons;

namespace Condyle.Analyzers.Tests.Recipes;

/// <summary>A recipe's page tells the truth: its code makes what it draws, and so does what it writes out.</summary>
public partial class RecipePageTests
{
    private const string Members = """
        private static JointSet Finger(Joint wrist, string name, float z)
        {
            var first = wrist.Child($"{name}_1_left", at: new(0.08f, 0, z));
            return new(first, first.Child($"{name}_2_left", at: new(0.04f, 0, 0)));
        }
        """;

    private static readonly Dictionary<string, string> Befores = new(StringComparer.Ordinal)
    {
        ["Biped"] = "",
        ["Limb"] = "",
        ["FootRoll"] = "var leg = rig.Limb(rig.Chain(joints.Hip[side], joints.Ankle[side]), \"leg\", side, root, systems, root, new LimbOptions { Goal = \"foot\" });",
        ["Collar"] = """
            var chest = rig.Control("turn_chest").Under(root).PlacedAt(joints.Chest);
            rig.Drive(joints.Chest).ByChannels(chest);
            var arm = rig.Limb(rig.Chain(joints.Shoulder[side], joints.Wrist[side]), "arm", side, under: chest, systems, space: root, new LimbOptions { Goal = "hand", HasLabels = false });
            """,
        ["Fingers"] = """
            var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(joints.Wrist[side]);
            rig.Drive(joints.Wrist[side]).ByChannels(hand);
            var (thumb, index, little) = (Finger(joints.Wrist[side], "thumb", 0.05f), Finger(joints.Wrist[side], "index", 0.03f), Finger(joints.Wrist[side], "little", -0.03f));
            """,
        ["Spaces"] = """
            var chest = rig.Control("turn_chest").Under(root).PlacedAt(joints.Chest);
            rig.Drive(joints.Chest).ByChannels(chest);
            var head = rig.Head(joints.Head, under: chest, space: root);
            var arm = rig.Limb(rig.Chain(joints.Shoulder[side], joints.Wrist[side]), "arm", side, under: chest, systems, space: root, new LimbOptions { Goal = "hand", HasLabels = false });
            var tool = rig.Control("tool").Under(root).PlacedAt(joints.Chest);
            """,
        ["Spine"] = "",
        ["Head"] = """
            var chest = rig.Control("turn_chest").Under(root).PlacedAt(joints.Chest);
            rig.Drive(joints.Chest).ByChannels(chest);
            JointPair eyes = new(joints.Head.Child("eye_left", at: new(0.03f, 0.1f, 0.08f)), joints.Head.Child("eye_right", at: new(-0.03f, 0.1f, 0.08f)));
            """,
        ["Tail"] = """
            var first = joints.Pelvis.Child("tail_1", at: new(0, 0, -0.1f));
            var bones = rig.Chain(first, first.Child("tail_2", at: new(0, 0, -0.1f)).Child("tail_3", at: new(0, 0, -0.1f)));
            """,
    };

    public static TheoryData<string> Pages => [.. Directory.GetFiles(Folder, "*.md").Select(page => Path.GetFileNameWithoutExtension(page)!)];

    private static string Folder => Repository.PathTo("src", "Condyle", "Recipes");

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_draws_and_writes_out_what_its_code_makes(string page)
    {
        var blocks = File.ReadAllText(Path.Combine(Folder, page + ".md")).ReplaceLineEndings("\n").Split("```").Where((_, i) => i % 2 == 1).ToList();
        var (code, tree, written) = (blocks[0]["csharp".Length..], blocks[1].Trim('\n'), blocks[2]["csharp".Length..]);
        Assert.Equal(tree, Tree(page, code));
        Assert.Equal(WithoutLimits(tree), WithoutLimits(Tree(page, written)));
    }

    /// <summary>Limits are numbers by the dozen; the pages say in words that they are set as well.</summary>
    private static string WithoutLimits(string tree) => Limits().Replace(tree, "[").Replace("  []", "", StringComparison.Ordinal);

    [GeneratedRegex(@"\[((turn|move) [^;\]]*(; )?)+")]
    private static partial Regex Limits();

    /// <summary>What the rig has with the code and hasn't without, as the verb <c>tree</c> prints it; what moves a joint stands under the joint.</summary>
    private static string Tree(string page, string code)
    {
        var without = Lines(page, "").ToHashSet(StringComparer.Ordinal);
        var kept = new List<string>();
        string? moved = null;
        foreach (var line in Lines(page, code))
        {
            var isNew = !without.Contains(line);
            var isRelation = line.TrimStart().StartsWith("<-", StringComparison.Ordinal);
            if (isNew && isRelation && moved is not null)
                kept.Add(moved);
            if (isNew)
                kept.Add(line);
            moved = isNew ? null : isRelation ? moved : line;
        }

        return string.Join('\n', kept);
    }

    private static string[] Lines(string page, string code)
    {
        var body = $"var side = Side.Left;\n{Befores[page]}\n{code}";
        return SheetText.Of(SheetWriter.Of(Written.Run(page switch { "Biped" => Written.FilesOnTheSkeleton(body), "Spine" => Written.FilesOnTheWorld(body), _ => Written.Files(body, Members) }))).TrimEnd().ReplaceLineEndings("\n").Split('\n');
    }
}
