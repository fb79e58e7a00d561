using System.Text.RegularExpressions;
using Condyle.Analyzers.Reporting;
using Condyle.Analyzers.Tests.Corpus;
using Condyle.Analyzers.Tests.Reading;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Tests;

/// <summary>Every fix that is offered in the corpus: the code compiles without a new warning, no comment is lost, the finding is gone, no other has come, and the rig is the same but for one kind of element, the blamed one.</summary>
public partial class CorpusRepairTests
{
    public static TheoryData<string> Slips => CorpusCase.In("Slips");

    [Theory]
    [MemberData(nameof(Slips))]
    public async Task A_fix_removes_its_finding_and_changes_nothing_else(string name)
    {
        var given = new CorpusCase("Slips", name);
        foreach (var (finding, offered) in await Offered(given))
            await Repairs(given, finding, offered.Repair);
    }

    [Theory]
    [InlineData("CDY8001_a_control_placed_at_the_joint_above", "Keep the offset that 'elbow_left' has at rest")]
    [InlineData("CDY8001_a_control_that_is_not_placed", "Place 'look' at 'head'")]
    [InlineData("CDY8001_a_control_that_is_passed_over", "Drive 'wrist_left' by 'turn_wrist_left'")]
    [InlineData("CDY5011_a_line_that_was_copied", "Set the turn about X of 'shade' once")]
    [InlineData("CDY5011_a_list_with_a_joint_twice")]
    [InlineData("CDY8001_a_goal_beside_the_tip", "Place 'foot_left' at the chain's tip")]
    [InlineData("CDY8001_a_group_that_a_copy_hangs_under", "Keep the offset that 'legs_group' has at rest")]
    [InlineData("CDY8001_a_helper_that_forgets_the_place")]
    [InlineData("CDY8001_a_pole_on_the_wrong_side", "Place 'elbow_pole_left' at the chain's pole point")]
    [InlineData("CDY8003_a_goal_at_a_spot", "Place 'hand_left' at the chain's tip")]
    [InlineData("CDY1004_settings_with_dots_and_spaces")]
    [InlineData("CDY1004_a_name_that_a_recipe_is_given", "Name what is built after 'long_leg'", "Name what is built after 'hand_tool'")]
    [InlineData("CDY1004_a_name_that_a_recipe_shares")]
    [InlineData("CDY1004_options_that_code_asks")]
    [InlineData("CDY1004_names_that_code_asks_for", "Name what is built after 'long_leg'")]
    [InlineData("CDY1003_a_wing_that_was_copied", "Name what is built after 'wing_right'")]
    [InlineData("CDY1003_an_arm_that_curves", "Name what is built after 'feeler_right'")]
    [InlineData("CDY1003_a_cable_that_changes_sides")]
    [InlineData("CDY1003_wings_that_share_their_name")]
    [InlineData("CDY1005_a_part_that_an_option_names", "Name what is built after 'torso'")]
    [InlineData("CDY1005_an_option_that_a_group_is_called_after")]
    [InlineData("CDY1008_arms_called_behind_by_a_recipe", "Name what is built after 'fk_arm'")]
    [InlineData("CDY1008_arms_called_in_front_by_a_recipe")]
    [InlineData("CDY1009_goals_that_say_their_side", "Name what is built after 'foot'")]
    [InlineData("CDY1009_a_pole_of_the_opposite_side", "Name what is built after 'knee_pole'")]
    [InlineData("CDY1009_arms_of_which_one_says_its_side", "Name what is built after 'arm'")]
    [InlineData("CDY1009_controls_called_after_joints")]
    [InlineData("CDY1009_a_name_that_was_completed", "Rename to 'hand_left'")]
    [InlineData("CDY2001_a_table_without_an_inverse", "Weight copy 'ik' by the inverse of switch 'fk'")]
    [InlineData("CDY2001_a_table_that_others_ask")]
    [InlineData("CDY2001_weights_by_a_counter", "Weight copy 'ik' by the inverse of switch 'fk'")]
    [InlineData("CDY2001_weights_by_a_key", "Weight copy 'ik' by the inverse of switch 'fk'")]
    [InlineData("CDY2001_a_helper_that_is_given_the_switch_twice", "Weight copy 'ik' by the inverse of switch 'fk'")]
    [InlineData("CDY2001_a_helper_that_is_called_in_a_loop")]
    [InlineData("CDY3002_two_slips_that_lie_as_far_apart")]
    [InlineData("CDY8001_a_claw_that_follows_the_image_of_the_other", "Keep the offset that 'claw_right' has at rest")]
    [InlineData("CDY8003_a_goal_that_is_not_placed", "Place 'hand_left' at the chain's tip")]
    [InlineData("CDY8003_a_helper_with_the_goal_of_the_other_limb")]
    [InlineData("CDY8003_a_stretch_that_does_not_stretch_far_enough", "Place 'hand_left' at the chain's tip")]
    [InlineData("CDY8003_a_tail_whose_end_is_too_far", "Place 'tail_end' at the chain's tip")]
    [InlineData("CDY2003_a_joint_that_is_picked_anew_each_time")]
    [InlineData("CDY2009_copied_for_the_right_leg", "Take copy 'fk' of the chain from 'hip_right' to 'ankle_right'")]
    [InlineData("CDY2009_the_right_arm_from_the_left")]
    [InlineData("CDY4003_twist_joints_that_code_counts")]
    [InlineData("CDY4003_a_twist_joint_that_code_only_asks_for")]
    [InlineData("CDY4003_a_chain_of_which_only_the_ends_are_asked", "Take the twist joint 'shoulder_twist' out of the chain")]
    [InlineData("CDY7001_an_arm_with_its_collar", "Solve copy 'ik' of the chain from 'collar_left' to 'wrist_left' as many bones")]
    [InlineData("CDY7001_a_helper_for_any_limb")]
    [InlineData("CDY7001_twist_joints_left_in_the_chain", "Take the twist joints out of the chain from 'shoulder' to 'hook'")]
    [InlineData("CDY7004_a_pole_at_the_goal", "Place 'knee_pole_left' at the chain's pole point")]
    [InlineData("CDY7004_pole_placed_at_the_goal")]
    [InlineData("CDY7005_a_twist_joint_at_the_elbow", "Take the twist joints out of the chain from 'shoulder' to 'hook'")]
    [InlineData("CDY7005_two_joints_in_one_place")]
    [InlineData("CDY1001_another_teams_suffix", "Rename to 'held_left_group'", "Rename to 'tools_group'")]
    [InlineData("CDY2002_lone_source", "Drive 'head' by 'look'")]
    [InlineData("CDY2002_in_a_loop")]
    [InlineData("CDY3004_a_collar_of_the_left_that_follows_the_right", "Drive 'collar_left' by 'shrug_collar_left'")]
    [InlineData("CDY3004_an_ankle_crossed_while_a_range_is_open", "Drive 'ankle_left' by 'bend_ankle_left'")]
    [InlineData("CDY3004_groups_that_a_helper_crosses")]
    [InlineData("CDY3004_goals_of_the_opposite_side", "Let 'ankle_left' reach for 'foot_left'")]
    [InlineData("CDY3004_an_arm_that_faces_the_other_pole", "Let 'elbow_right' face 'elbow_pole_right'")]
    [InlineData("CDY3004_toes_that_look_at_the_others_target", "Aim 'toes_left' at 'look_left'")]
    [InlineData("CDY3004_arms_that_share_one_turn", "Let 'wrist_left' share the turn of 'sway_shoulder_left'")]
    [InlineData("CDY3004_an_arm_along_a_curve_of_the_other", "Lead the curve of 'wrist_left' through 'hand_left'")]
    [InlineData("CDY3004_a_thumb_by_the_other_dial", "Let 'thumb_right' go by dial 'curl' of 'hand_right'")]
    [InlineData("CDY3004_a_thumb_that_spreads_by_the_other_dial", "Let 'thumb_left' go by dial 'curl' of 'hand_left'", "Let 'thumb_right' go by dial 'curl' of 'hand_right'")]
    [InlineData("CDY3004_pincers_that_the_other_dial_opens")]
    [InlineData("CDY5008_a_dial_of_large_numbers", "Let dial 'wound' rest at 10000000")]
    [InlineData("CDY5008_a_dial_that_begins_at_one", "Let dial 'grow' rest at 0.5")]
    [InlineData("CDY5008_a_helper_that_takes_percent")]
    [InlineData("CDY7004_a_pole_before_its_copy_is_in_the_table")]
    [InlineData("CDY8003_a_goal_before_its_copy_is_in_the_field")]
    [InlineData("CDY2002_in_a_helper_that_gives_the_blend")]
    [InlineData("CDY7001_a_twist_joint_that_a_group_follows")]
    [InlineData("CDY7005_a_twist_joint_that_is_driven_by_its_copy")]
    [InlineData("CDY3004_a_table_with_another_control_on_that_side", "Drive 'collar_left' by 'shrug_collar_left'")]
    [InlineData("CDY9004_mistyped", "Rename to 'parts_group'", "Accept CDY1001")]
    [InlineData("CDY3009_scale_in_a_helper", "Drive 'pelvis' without scale")]
    [InlineData("CDY1008_another_suffix_and_other_marks")]
    public async Task A_fix_is_offered_where_the_right_code_is_known(string name, params string[] titles) => Assert.Equal(
        titles,
        (await Offered(new CorpusCase("Slips", name))).Select(each => each.Offered.Repair.Title));

    private static async Task<IReadOnlyList<(Diagnostic Finding, OfferedRepair Offered)>> Offered(CorpusCase given)
    {
        using var workspace = new AdhocWorkspace();
        var project = Refactorings.Offered.Open(workspace, given.Files).Project;
        var offered = new List<(Diagnostic, OfferedRepair)>();
        foreach (var finding in await FrontEnds.Read(given.Files))
            offered.AddRange((await new RepairTrials().Passed(project, finding, CancellationToken.None)).Select(repair => (finding, repair)));
        return offered;
    }

    private static async Task Repairs(CorpusCase given, Diagnostic finding, PlannedRepair repair)
    {
        (string Path, string Source)[] after = [.. given.Files.Select(file => (file.Path, Edited(file.Path, file.Source, repair)))];
        Assert.NotEqual(given.Files, after);
        Assert.Subset(Problems(given.Files), Problems(after));
        Assert.Equal(Comments(given.Files), Comments(after));
        var left = (await FrontEnds.Read(after)).Select(other => other.Id).ToList();
        Assert.True(!left.Contains(finding.Id) || left.Count(id => id == finding.Id) < given.Marked.Count(mark => mark.Rule == finding.Id), $"{repair.Title}: {finding.Id} is still found.");
        Assert.Subset(given.Marked.Select(mark => mark.Rule).ToHashSet(), left.ToHashSet());
        var (lines, changed) = (Lines(given.Files), Lines(after));
        var kinds = lines.Except(changed).Concat(changed.Except(lines)).Select(line => line.Split(' ')[0]).Distinct().ToList();
        Assert.True(
            kinds.Count <= 1 || (repair.Kind == "GoOn" && kinds.TrueForAll(kind => kind is "chain" or "copy" or "CopyJoint")) // copies go with their chain
                || (repair.Kind == "PlaceAt" && kinds.TrueForAll(kind => kind is "Control" or "spot")) // where it was
                || (repair.Kind == "DriveInstead" && kinds.TrueForAll(kind => kind is "blend" or "drive"))
                || (repair.Kind == "CallInstead" && kinds.TrueForAll(kind => kind is "two" or "many"))
                || repair.Kind is "AppendText" or "ReplaceText", // a new name shows wherever its node does
            $"{repair.Title} changes more than it says:{Environment.NewLine}{string.Join(Environment.NewLine, lines.Except(changed).Concat(changed.Except(lines)))}");
    }

    private static HashSet<string> Problems((string Path, string Source)[] files) => [.. CompiledCode.Compile(files).GetDiagnostics().Where(problem => problem.Severity >= DiagnosticSeverity.Warning).Select(problem => problem.Id)];

    private static IEnumerable<string> Comments((string Path, string Source)[] files) =>
        files.SelectMany(file => CSharpSyntaxTree.ParseText(file.Source).GetRoot().DescendantTrivia()).Where(trivia => !string.IsNullOrWhiteSpace(trivia.ToString())).Select(trivia => trivia.ToString());

    private static string Edited(string path, string source, PlannedRepair repair) =>
        SourceText.From(source).WithChanges(repair.Edits.Where(edit => edit.Path == path).OrderBy(edit => edit.Span.Start).Select(edit => new TextChange(edit.Span, edit.Text))).ToString();

    private static List<string> Lines((string Path, string Source)[] files)
    {
        var compilation = CompiledCode.Compile(files);
        var definition = compilation.GetSymbolsWithName(_ => true, SymbolFilter.Type).OfType<INamedTypeSymbol>().Single(type => !type.IsAbstract && type.AllInterfaces.Any(face => face.Name == nameof(IRigDefinition)));
        return [.. Oracle.Read(compilation, definition.ToDisplayString()).Paths.SelectMany(path => Oracle.Lines(path, compilation)).Select(line => Number().Replace(line, "#"))];
    }

    // What comes after something that is left out has another number.
    [GeneratedRegex(@"#\d+")]
    private static partial Regex Number();
}
