namespace ReworkThermal.App.Rendering.Record;

/// <summary>How the record looks on screen, from 360 px up, and on paper.</summary>
internal static class RecordStyle
{
    /// <summary>The style sheet.</summary>
    internal const string Sheet = """
        :root { color-scheme: light; }
        body { font: 16px/1.45 system-ui, sans-serif; color: #111; background: #fff; margin: 0; }
        main { max-width: 56rem; margin: 0 auto; padding: 0.75rem; }
        h1 { font-size: 1.5rem; line-height: 1.2; margin: 0.5rem 0; overflow-wrap: anywhere; }
        h2 { font-size: 1.15rem; margin: 1.25rem 0 0.4rem; border-bottom: 2px solid #0072b2; }
        p, li { overflow-wrap: anywhere; }
        td, th { overflow-wrap: break-word; }
        ul { padding-left: 1.2rem; margin: 0.4rem 0; }
        .wide, .plot { overflow-x: auto; }
        table { border-collapse: collapse; font-size: 0.9rem; }
        th, td { text-align: left; vertical-align: top; padding: 0.15rem 0.6rem 0.15rem 0; border-bottom: 1px solid #ddd; }
        th.figure, td.figure { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
        .warning { border-left: 6px solid #d55e00; padding: 0.3rem 0.6rem; background: #fff4ec; }
        .small { font-size: 0.75rem; color: #444; }
        figure { margin: 0.6rem 0; }
        figcaption { font-size: 0.85rem; color: #444; }
        .plot svg { display: block; min-width: 40rem; width: 100%; height: auto; }
        @media print {
          @page { size: A4; margin: 10mm; }
          body { font-size: 7.6pt; line-height: 1.2; }
          main { max-width: none; padding: 0; columns: 2; column-gap: 6mm; }
          h1, h1 + p { column-span: all; margin: 0 0 1mm; }
          h1 { font-size: 13pt; }
          h2 { font-size: 9.5pt; margin: 2mm 0 0.8mm; break-after: avoid; }
          p, ul { margin: 0.7mm 0; }
          table { font-size: 6.8pt; }
          th, td { padding: 0.1mm 1.5mm 0.1mm 0; }
          figure, tr, .warning { break-inside: avoid; margin: 1mm 0; }
          figcaption { font-size: 6.4pt; }
          .plot svg { min-width: 0; }
          td.figure { white-space: normal; }
          .small { font-size: 5pt; line-height: 1.15; }
          .wide, .plot { overflow: visible; }
        }

        """;
}
