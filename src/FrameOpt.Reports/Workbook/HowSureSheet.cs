using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Reports.Workbook.Charts;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook;

/// <summary>How sure the answer is, in numbers: shares of the cases, percentiles, and what each uncertain number does alone.</summary>
internal static class HowSureSheet
{
    public const string Name = "How sure";
    private const double FirstWidth = 40;
    private const double TextWidth = 24;
    private const double NumberWidth = 12;
    private const int RowsPerChart = 24;
    private const int ChartBars = 8;

    public static void Add(Spreadsheet book, Study study, DesignEvaluation chosen, UncertaintyResult uncertainty)
    {
        var settled = study.Mission.Index().Where(phase => phase.Item.IsSettled).Select(phase => phase.Index).ToList();
        var page = new SheetBuilder(book, Name,
            [FirstWidth, TextWidth, TextWidth, .. Enumerable.Repeat(NumberWidth, Math.Max(4, 2 * settled.Count + 2))],
            isPortrait: true);
        page.Paragraphs([.. UncertaintySection.Of(study, uncertainty).Lines, $"Taken: {NoiseText.Setting(study.Noise)}."]);
        page.Heading(NoiseBarsSection.Title);
        page.Paragraphs(NoiseBarsSection.Of(study, chosen, uncertainty, uncertainty.Bars.Count).Lines);
        var chartRow = page.Row;
        page.Row += RowsPerChart;
        var placed = page.Table(Bars(study, chosen, uncertainty.Bars, settled));
        var heaviest = study.Mission[study.HeaviestSettledPhase].Name;
        var shown = Math.Min(ChartBars, uncertainty.Bars.Count);
        book.AddChart(new PlacedChart(Name, chartRow, 1, $"What moves the residual torque in {heaviest}", ChartXml.Bars(
            $"Change of the residual torque in {heaviest} by each number alone", "",
            new ChartAxis("change of the residual torque [N·m], right +", "General"),
            [
                new ChartSeries("at the 10 % point", placed.Column(0, 0, shown), placed.Column(3, 0, shown),
                    new SeriesStyle(Palette.Orange, Pattern: "wdUpDiag")),
                new ChartSeries("at the 90 % point", placed.Column(0, 0, shown), placed.Column(4, 0, shown), new SeriesStyle(Palette.Blue)),
            ],
            isHorizontal: true)));
        page.Heading($"Which of the first {shown} violate a limit or make another design the best");
        page.Paragraphs(Changes(study, chosen, [.. uncertainty.Bars.Take(ChartBars)]).DefaultIfEmpty("By none of them."));
        page.Heading("In how many cases each limit is met");
        page.Table(Limits(study, uncertainty.Sample));
        var phases = UncertaintySection.Phases(study, uncertainty);
        page.Heading(phases.Title);
        page.Paragraphs(phases.Lines);
        page.Table(Percentiles(study, uncertainty.Sample));
        foreach (var section in ChoiceSection.Of(study, uncertainty))
        {
            page.Heading(section.Title);
            page.Paragraphs(section.Lines);
            if (section.Table is { } table)
                page.Table(Texts(table));
        }
    }

    private static Table Texts(AnswerTable table) =>
        new([.. table.Headers.Select((header, c) => Column.OfTexts(header, row => table.Rows[row][c]))], table.Rows.Count);

    /// <summary>A row for each number: its two ends, what they change in the heaviest phase, and what they give in the other settled
    /// phases.</summary>
    private static Table Bars(Study study, DesignEvaluation chosen, IReadOnlyList<NoiseBar> bars, IReadOnlyList<int> settled)
    {
        var heaviest = study.HeaviestSettledPhase;
        double Residual(DesignEvaluation design, int phase) =>
            design.Failure is null ? design.Phases[phase][PhaseQuantity.Residual] : double.NaN;
        double Effort(DesignEvaluation design) => design.Failure is null ? design[MissionQuantity.EffortWorst] : double.NaN;
        Column OfEnd(string what, int end, Func<DesignEvaluation, double> value) => Column.OfNumbers(
            $"{what}, {(end == 0 ? 10 : 90)} % point", "0.00", row => value(end == 0 ? bars[row].Low : bars[row].High));
        Column Change(int end) => OfEnd($"change in {study.Mission[heaviest].Name} [N·m], right +", end,
            design => Residual(design, heaviest) - Residual(chosen, heaviest));
        return new Table(
            [
                Column.OfTexts("number", row => bars[row].Source.Title),
                Column.OfTexts("10 % point", row => NoiseText.Deviation(bars[row].Source, bars[row].LowDeviation)),
                Column.OfTexts("90 % point", row => NoiseText.Deviation(bars[row].Source, bars[row].HighDeviation)),
                Change(0), Change(1),
                .. settled.Where(phase => phase != heaviest).SelectMany(phase => new[] { 0, 1 }.Select(end => OfEnd(
                    $"residual in {study.Mission[phase].Name} [N·m], right +", end, design => Residual(design, phase)))),
                OfEnd("largest effort", 0, Effort), OfEnd("largest effort", 1, Effort),
            ],
            bars.Count);
    }

    private static IEnumerable<string> Changes(Study study, DesignEvaluation chosen, IReadOnlyList<NoiseBar> bars)
    {
        foreach (var bar in bars)
        {
            foreach (var (deviation, design, best) in
                new[] { (bar.LowDeviation, bar.Low, bar.LowBest), (bar.HighDeviation, bar.High, bar.HighBest) })
            {
                var violated = NoiseBarsSection.Violated(study, design);
                if (best is null && violated == NoiseBarsSection.None)
                    continue;
                yield return $"{StudyText.Capitalised(bar.Source.Title)}, {NoiseText.Deviation(bar.Source, deviation)}: limits violated: "
                    + violated
                    + (study.IsOneFrame ? "." : $"; best design there: {NoiseBarsSection.Best(study, chosen, design, best)}.");
            }
        }
    }

    private static Table Limits(Study study, SampleSummary sample)
    {
        (string Name, Estimate Share)[] rows =
        [
            .. study.Limits.Select((limit, i) => (StudyText.LimitTitle(limit), sample.EachLimit[i])),
            ("every limit", sample.LimitsMet),
            ("the pilot can hold every settled phase", sample.Held),
        ];
        return new Table(
            [
                Column.OfTexts("limit", row => rows[row].Name),
                Column.OfNumbers("share of the cases [%]", "0.0", row => 100 * rows[row].Share.Value),
                Column.OfNumbers("standard error [%]", "0.00", row => 100 * rows[row].Share.StandardError),
            ],
            rows.Length);
    }

    private static Table Percentiles(Study study, SampleSummary sample) => new(
        [
            Column.OfTexts("phase", row => study.Mission[row].Name),
            Column.OfNumbers("residual [N·m], right +, 10 % point", "0.00", row => sample.Phases[row].Residual.Tenth),
            Column.OfNumbers("50 % point", "0.00", row => sample.Phases[row].Residual.Median),
            Column.OfNumbers("90 % point", "0.00", row => sample.Phases[row].Residual.NineTenths),
            .. new (string, Func<Percentiles, double>)[]
            {
                ("effort, 10 % point", points => points.Tenth), ("effort, 50 % point", points => points.Median),
                ("effort, 90 % point", points => points.NineTenths),
            }.Select(column => Column.OfNumbers(column.Item1, "0.00",
                row => study.Mission[row].IsSettled ? column.Item2(sample.Phases[row].Effort) : double.NaN)),
        ],
        study.Mission.Count);
}
