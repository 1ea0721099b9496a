// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLocale>
#include <array>

#include "app/command_line/plan_options.h"
#include "app/command_line/shows.h"
#include "app/command_line/verbs.h"
#include "core/maps/maps.h"
#include "core/units/bands.h"

namespace howlmap::app {
namespace {

struct Kind {
    const char* name;
    MapKind kind;
    const char* subject;  ///< option that names what the map is of; null: none
};
constexpr std::array kKinds = {Kind{"feedback", MapKind::feedback, "input"},
                               Kind{"loudspeaker", MapKind::loudspeaker, "loudspeaker"},
                               Kind{"level", MapKind::level, "mix"}, Kind{"wash", MapKind::wash, nullptr}};

void describe(QCommandLineParser& options) {
    add_value_option(options, {QStringLiteral("kind")},
                     QT_TRANSLATE_NOOP("command_line", "feedback, loudspeaker, level or wash"), "KIND");
    add_value_option(options, {QStringLiteral("input")}, QT_TRANSLATE_NOOP("command_line", "input of a feedback map"),
                     "ID");
    add_value_option(options, {QStringLiteral("loudspeaker")},
                     QT_TRANSLATE_NOOP("command_line", "loudspeaker of a loudspeaker map"), "ID");
    add_value_option(options, {QStringLiteral("mix")}, QT_TRANSLATE_NOOP("command_line", "mix of a level map"), "ID");
    add_value_option(options, {QStringLiteral("band")},
                     QT_TRANSLATE_NOOP("command_line", "one third-octave band only, by its nominal frequency"), "HZ");
    add_value_option(options, {QStringLiteral("step")},
                     QT_TRANSLATE_NOOP("command_line", "metres between cells, 0.02 to 1; 0.05 if not given"), "M");
    add_plan_options(options);
}

std::optional<int> band_of(const QString& text) {
    bool ok = false;
    const double hz = QLocale::c().toDouble(text, &ok);
    return ok ? third_octave_of_nominal(hz) : std::nullopt;
}

const Kind* kind_option(const Arguments& arguments, Console& console) {
    for (const Kind& kind : kKinds) {
        if (arguments.value("kind") != QLatin1String(kind.name)) continue;
        if (!kind.subject || arguments.has(kind.subject)) return &kind;
        console.complain(cli_text(QT_TRANSLATE_NOOP("command_line", "a %1 map needs --%2 ID"))
                             .arg(QLatin1String(kind.name), QLatin1String(kind.subject)));
        return nullptr;
    }
    console.complain(cli_text(QT_TRANSLATE_NOOP("command_line",
                                                "--kind: found \"%1\", expected feedback, loudspeaker, level or wash"))
                         .arg(arguments.value("kind")));
    return nullptr;
}

std::optional<MapRequest> request_option(const Arguments& arguments, Console& console) {
    const Kind* kind = kind_option(arguments, console);
    if (!kind) return std::nullopt;
    MapRequest request;
    request.kind = kind->kind;
    if (kind->subject) request.id = arguments.value(kind->subject).toStdString();
    const auto step =
        number_option(arguments, "step", request.options.step, kSmallestMapStep, kLargestMapStep, console);
    if (!step) return std::nullopt;
    request.options.step = *step;
    if (!arguments.has("band")) return request;
    request.options.band = band_of(arguments.value("band"));
    if (request.options.band) return request;
    console.complain(
        cli_text(QT_TRANSLATE_NOOP("command_line",
                                   "--band: found \"%1\", expected a nominal third-octave value such as 1000 or 31.5"))
            .arg(arguments.value("band")));
    return std::nullopt;
}

bool wants_csv(const Arguments& arguments) {
    return arguments.value("output").endsWith(QLatin1String(".csv"), Qt::CaseInsensitive);
}

Status draw_map(const Show& show, const MapRequest& request, MapGrid grid, const PlanFile& file, const QString& name,
                Console& console) {
    PlanDrawing drawing;
    drawing.font = page_font();
    const MapLook look = look_of(show, request, drawing.ink);
    drawing.map =
        std::make_shared<const MapPicture>(picture_of(std::make_shared<const MapGrid>(std::move(grid)), look));
    return write_plan(show, drawing, file, name, console);
}

Status run_map(const Arguments& arguments, Console& console) {
    const auto request = request_option(arguments, console);
    if (!request) return Status::refused;
    const bool csv = wants_csv(arguments);
    const std::optional<PlanFile> file = csv ? PlanFile{} : plan_file_option(arguments, console);
    if (!file) return Status::refused;
    const auto show = open_show(arguments.operands[0], console);
    if (!show) return Status::refused;
    auto grid = make_map(*show, *request);
    if (!grid) return console.complain(QString::fromStdString(grid.error().message));
    if (const QString notice = map_notice(*grid); !notice.isEmpty()) console.err << notice.toStdString() << '\n';
    if (csv) return write_output(arguments.value("output"), map_csv(*grid), console);
    return draw_map(*show, *request, std::move(*grid), *file, arguments.value("output"), console);
}

}  // namespace

const Verb map_verb{
    "map", "SHOW",   QT_TRANSLATE_NOOP("command_line", "one map over the plan (PNG, SVG, PDF) or its figures (CSV)"),
    true,  describe, run_map};

}  // namespace howlmap::app
