// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line/plan_options.h"

#include <QFontDatabase>
#include <QRegularExpression>

#include "app/command_line/shows.h"

namespace howlmap::app {
namespace {
std::optional<QSize> parsed_size(const QString& text) {
    static const QRegularExpression form(QStringLiteral("^(\\d{2,5})[xX](\\d{2,5})$"));
    const QRegularExpressionMatch match = form.match(text);
    const QSize size(match.captured(1).toInt(), match.captured(2).toInt());
    if (!match.hasMatch() || size.width() > kMostPictureSide || size.height() > kMostPictureSide) return std::nullopt;
    return size;
}
}  // namespace

void add_plan_options(QCommandLineParser& options) {
    add_value_option(options, {QStringLiteral("o"), QStringLiteral("output")},
                     QT_TRANSLATE_NOOP("command_line", "file to write; its ending says what kind"), "FILE");
    add_value_option(options, {QStringLiteral("dpi")},
                     QT_TRANSLATE_NOOP("command_line", "resolution of a PNG, 30 to 1200; 150 if not given"), "DPI");
    add_value_option(options, {QStringLiteral("size")},
                     QT_TRANSLATE_NOOP("command_line", "size of a PNG in pixels, like 1600x1200; a page if not given"),
                     "WxH");
    options.addOption({QStringLiteral("transparent"),
                       cli_text(QT_TRANSLATE_NOOP("command_line", "no page behind the plan (PNG, SVG)"))});
}

std::optional<PlanFile> plan_file_option(const Arguments& arguments, Console& console) {
    PlanFile file;
    const QString name = arguments.value("output");
    const auto format = plan_format_of(name);
    if (!format) {
        console.complain(
            name.isEmpty()
                ? cli_text(QT_TRANSLATE_NOOP("command_line", "say where to write with -o FILE.svg, .pdf or .png"))
                : cli_text(QT_TRANSLATE_NOOP("command_line", "%1: expected a name that ends in .svg, .pdf or .png"))
                      .arg(name));
        return std::nullopt;
    }
    file.format = *format;
    const auto dpi = number_option(arguments, "dpi", file.dpi, kLeastDpi, kMostDpi, console);
    if (!dpi) return std::nullopt;
    file.dpi = *dpi;
    file.transparent = arguments.has("transparent");
    if (!arguments.has("size")) return file;
    file.size = parsed_size(arguments.value("size"));
    if (file.size) return file;
    console.complain(
        cli_text(QT_TRANSLATE_NOOP("command_line",
                                   "--size: found \"%1\", expected two numbers of pixels like 1600x1200, up to 20000"))
            .arg(arguments.value("size")));
    return std::nullopt;
}

QFont page_font() {
    // Without a desktop the application's font may be one that is not there; this one comes with the program's
    // packages.
    const QString fallback = QStringLiteral("DejaVu Sans");
    return QFontDatabase::families().contains(fallback) ? QFont(fallback) : QFont();
}

Status write_plan(const Show& show, const PlanDrawing& drawing, const PlanFile& file, const QString& name,
                  Console& console) {
    const QByteArray bytes = plan_bytes(show, drawing, file);
    if (bytes.isEmpty())
        return console.complain(
            cli_text(QT_TRANSLATE_NOOP("command_line", "%1: a picture of this size cannot be made")).arg(name),
            Status::not_written);
    return write_output(name, std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())), console);
}

}  // namespace howlmap::app
