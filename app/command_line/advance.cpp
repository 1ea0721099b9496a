// SPDX-License-Identifier: GPL-3.0-or-later
// howlmap advance SHOW -o OUT.pdf: the sheet for the venue's engineer, and its lists as CSV.
#include <QDir>
#include <QFileInfo>
#include <QLocale>

#include "app/command_line/shows.h"
#include "app/command_line/verbs.h"
#include "app/export/sheet/advance_sheet.h"
#include "app/export/sheet/sheet_plan.h"
#include "core/report/lists.h"
#include "core/units/translate.h"

namespace howlmap::app {
namespace {

constexpr const char* kPages = "plan,inputs,mixes,risks";

void describe_advance(QCommandLineParser& options) {
    add_value_option(options, {QStringLiteral("o"), QStringLiteral("output")},
                     QT_TRANSLATE_NOOP("command_line", "the PDF to write"), "OUT.pdf");
    add_value_option(options, {QStringLiteral("csv")},
                     QT_TRANSLATE_NOOP("command_line", "write the lists as CSV files into this folder"), "DIR");
    add_value_option(options, {QStringLiteral("since")},
                     QT_TRANSLATE_NOOP("command_line", "add a page that says what changed since this older show"),
                     "OLD.howlmap");
    add_value_option(options, {QStringLiteral("pages")},
                     QT_TRANSLATE_NOOP("command_line", "which parts, of plan,inputs,mixes,risks"), "LIST");
    add_value_option(options, {QStringLiteral("paper")},
                     QT_TRANSLATE_NOOP("command_line", "A4 or Letter; by the locale if not given"), "SIZE");
    options.addOption({QStringLiteral("loops"),
                       cli_text(QT_TRANSLATE_NOOP("command_line", "draw the loops that matter on the plan"))});
    options.addOption({QStringLiteral("map"), cli_text(QT_TRANSLATE_NOOP("command_line",
                                                                         "put the feedback map of one input under "
                                                                         "the plan"))});
    add_value_option(options, {QStringLiteral("input")},
                     QT_TRANSLATE_NOOP("command_line", "whose map; if not given, of the input that rings first"), "ID");
    options.addOption(
        {QStringLiteral("one-mix-a-page"),
         cli_text(QT_TRANSLATE_NOOP("command_line", "each mix on a page of its own, for the monitor desk"))});
}

std::optional<Status> read_pages(const Arguments& arguments, SheetOptions& sheet, Console& console) {
    if (!arguments.has("pages")) return std::nullopt;
    const QStringList known = QString::fromLatin1(kPages).split(QLatin1Char(','));
    const QStringList wanted = arguments.value("pages").split(QLatin1Char(','), Qt::SkipEmptyParts);
    for (const QString& page : wanted)
        if (!known.contains(page))
            return console.complain(
                cli_text(QT_TRANSLATE_NOOP("command_line", "--pages: found \"%1\", expected some of %2"))
                    .arg(page, QString::fromLatin1(kPages)));
    sheet.plan = wanted.contains(known[0]);
    sheet.inputs = wanted.contains(known[1]);
    sheet.mixes = wanted.contains(known[2]);
    sheet.risks = wanted.contains(known[3]);
    return std::nullopt;
}

std::optional<Status> read_options(const Arguments& arguments, SheetOptions& sheet, Console& console) {
    sheet.paper = paper_of_locale();
    if (arguments.has("paper")) {
        const QString paper = arguments.value("paper").toLower();
        if (paper != QLatin1String("a4") && paper != QLatin1String("letter"))
            return console.complain(
                cli_text(QT_TRANSLATE_NOOP("command_line", "--paper: found \"%1\", expected A4 or Letter"))
                    .arg(arguments.value("paper")));
        sheet.paper = paper == QLatin1String("a4") ? QPageSize::A4 : QPageSize::Letter;
    }
    sheet.one_mix_a_page = arguments.has("one-mix-a-page");
    if (arguments.has("since")) {
        auto older = open_show(arguments.value("since"), console);
        if (!older) return Status::refused;
        sheet.since = std::make_shared<const Show>(std::move(*older));
        sheet.since_name = QFileInfo(arguments.value("since")).fileName();
    }
    return read_pages(arguments, sheet, console);
}

Status write_lists(const SheetContent& content, const QString& folder, Console& console) {
    if (!QDir().mkpath(folder))
        return console.complain(
            cli_text(QT_TRANSLATE_NOOP("command_line", "%1: the folder cannot be made")).arg(folder),
            Status::not_written);
    const QDir dir(folder);
    const PointsInFigures for_machines;
    for (const auto& [name, table] : report::all_lists(content.show, content.ring_out())) {
        const Status status = write_output(dir.filePath(QString::fromStdString(name)), report::to_csv(table), console);
        if (status != Status::done) return status;
    }
    return Status::done;
}

/// The look of the plan; complains when the map that is asked for cannot be had.
std::optional<SheetPlanLook> plan_look(const SheetContent& content, const Arguments& arguments, Console& console) {
    SheetPlanLook look{arguments.has("loops"), {}};
    if (!arguments.has("map") && !arguments.has("input")) return look;
    const std::string input =
        arguments.has("input") ? arguments.value("input").toStdString() : input_of_first_ring(content.result);
    if (input.empty()) {
        console.err
            << cli_text(QT_TRANSLATE_NOOP("command_line", "No loop on this stage can ring: no map.")).toStdString()
            << '\n';
        return look;
    }
    auto map = sheet_map(content.show, input);
    if (!map) return console.complain(QString::fromStdString("--map: ") + map.error()), std::nullopt;
    look.map = std::move(*map);
    return look;
}

Status run(const Arguments& arguments, Console& console) {
    if (!arguments.has("output") && !arguments.has("csv"))
        return console.complain(
            cli_text(QT_TRANSLATE_NOOP("command_line", "advance: where to? Give -o OUT.pdf, --csv DIR or both")));
    if (arguments.has("output"))
        if (const auto refused = refuse_other_endings(arguments.value("output"), ".pdf", console)) return *refused;
    const auto show = open_show(arguments.operands[0], console);
    if (!show) return Status::refused;
    SheetOptions sheet;
    if (const auto refused = read_options(arguments, sheet, console)) return *refused;
    const SheetContent content{*show, *analyse(*show)};
    if (arguments.has("output")) {
        const auto look = plan_look(content, arguments, console);
        if (!look) return Status::refused;
        const QByteArray pdf = sheet_pdf(content, sheet, plan_of_sheet(content, *look));
        const Status status =
            write_output(arguments.value("output"), {pdf.constData(), static_cast<std::size_t>(pdf.size())}, console);
        if (status != Status::done) return status;
    }
    return arguments.has("csv") ? write_lists(content, arguments.value("csv"), console) : Status::done;
}

}  // namespace

const Verb advance_verb{
    "advance",
    "SHOW",
    QT_TRANSLATE_NOOP("command_line",
                      "writes the sheet for the venue's engineer: plan, inputs, mixes, equalisers, risks"),
    true,
    describe_advance,
    run};

}  // namespace howlmap::app
