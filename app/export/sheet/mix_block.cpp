// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/sheet/mix_block.h"

#include <algorithm>

#include "app/export/sheet/sheet_text.h"
#include "app/export/sheet/table_block.h"
#include "app/settings/figures.h"
#include "core/report/words.h"

namespace howlmap::app {
namespace {

QString head_line(const report::MixSheet& sheet) {
    QString line = sheet_text("Mix %1  %2").arg(sheet.mix->number).arg(qstr(report::name_of(*sheet.mix)));
    if (!sheet.who.empty()) line += sheet_text("  -  for %1").arg(qstr(report::listed(sheet.who)));
    if (!sheet.outlets.empty()) line += sheet_text("  -  on %1").arg(qstr(report::listed(sheet.outlets)));
    return line;
}

/// "most: fiddle 98 dB (ch 2)   medium: voice 92 dB (ch 1)"
QString sends_line(const report::MixSheet& sheet) {
    QStringList groups;
    std::string amount;
    for (const report::SendLine& send : sheet.sends) {
        const QString entry = sheet_text("%1 %2 (ch %3)")
                                  .arg(qstr(send.input), qstr(report::level_words(send.level_db)))
                                  .arg(send.channel);
        if (send.amount != amount) {
            groups.append(QStringLiteral("%1: %2").arg(qstr(send.amount), entry));
            amount = send.amount;
        } else {
            groups.last() += QStringLiteral(", ") + entry;
        }
    }
    return groups.isEmpty() ? sheet_text("no sends") : groups.join(QStringLiteral(";  "));
}

QStringList settings_of(const report::MixSheet& sheet) {
    QStringList parts;
    for (const std::string& setting : sheet.settings) parts.append(qstr(setting));
    if (parts.isEmpty()) parts.append(sheet_text("polarity normal, no high-pass, no notches"));
    return parts;
}

bool is_set(const Mix& mix) {
    return std::any_of(mix.graphic_eq.begin(), mix.graphic_eq.end(), [](auto& band) { return band.second != 0.0; });
}

/// "160 Hz (1), 250 Hz (3)": the first bands of the ring-out list that are due to a mix.
QString bands_to_expect(const BandRisk& risk) {
    QStringList bands;
    for (int rank = 1; rank <= kRanksShown; ++rank) {
        const auto found = std::find(risk.rank.begin(), risk.rank.end(), rank);
        if (found == risk.rank.end()) continue;
        const double hz = kNominalThirdOctaves[static_cast<std::size_t>(found - risk.rank.begin())];
        const QString band = QStringLiteral("%1 (%2)").arg(qstr(report::band_words(hz))).arg(rank);
        bands.append(QString(band).replace(u' ', QChar::Nbsp));  // a figure stays beside its unit
    }
    return bands.join(QStringLiteral(", "));
}

/// An equaliser that nobody has touched takes no room for its faders: a line says so, and which bands to expect.
QString settings_line(const report::MixSheet& sheet, const BandRisk& risk) {
    QStringList parts = settings_of(sheet);
    if (!sheet.mix->loudspeakers.empty() && !is_set(*sheet.mix)) parts.append(sheet_text("equaliser flat"));
    const QString expected = bands_to_expect(risk);
    if (!expected.isEmpty()) parts.append(sheet_text("may ring at %1").arg(expected));
    return parts.join(QStringLiteral("; "));
}

}  // namespace

double mix_height(const Flow& flow, const report::MixSheet& sheet, const BandRisk& risk) {
    double height = (is_set(*sheet.mix) ? flow.spacing().fader_height : 0.0) + flow.spacing().gap;
    for (const QString& line : {head_line(sheet), sends_line(sheet), settings_line(sheet, risk)})
        height += flow.text_height(line, Type::body, flow.width()) + 3.0;
    return height;
}

void draw_mix(Flow& flow, const report::MixSheet& sheet, const BandRisk& risk) {
    const QString head = head_line(sheet), sends = sends_line(sheet), settings = settings_line(sheet, risk);
    flow.need(mix_height(flow, sheet, risk));
    flow.painter().fillRect(
        QRectF(flow.left(), flow.y(), flow.width(), flow.text_height(head, Type::body, flow.width())), kShade);
    flow.paragraph(head);
    flow.paragraph(sends);
    flow.paragraph(settings);
    if (is_set(*sheet.mix)) draw_faders(flow, flow.take(flow.spacing().fader_height), *sheet.mix, risk);
    flow.skip(flow.spacing().gap);
}

namespace {
constexpr double kTallFaders = 190.0;
constexpr std::size_t kLinesToWrite = 5;
constexpr int kRoomToWrite = 30;  // letters: a figure by hand is wider than print

std::string in_words(const char* english) { return sheet_text(english).toStdString(); }

report::Table sends_table(const report::MixSheet& sheet) {
    report::Table table{{},
                        {in_words("Ch"), in_words("Input"), in_words("How much"), in_words("Level at 1 m"),
                         in_words("Set at the desk")},
                        {}};
    for (const report::SendLine& send : sheet.sends)
        table.rows.push_back(
            {std::to_string(send.channel), send.input, send.amount, report::level_words(send.level_db), {}});
    return table;
}

report::Table lines_to_write() {
    report::Table table{{}, {in_words("Heard, Hz"), in_words("Cut, dB"), in_words("Note")}, {}};
    const std::string room = QString(kRoomToWrite, QChar::Nbsp).toStdString();
    table.rows.assign(kLinesToWrite, {room + "\n\u00a0", room, {}});
    return table;
}
}  // namespace

void draw_mix_page(Flow& flow, const report::MixSheet& sheet, const BandRisk& risk, const report::Table& ring_out) {
    flow.heading(head_line(sheet));
    flow.paragraph(settings_of(sheet).join(QStringLiteral("; ")));
    flow.skip(4.0);
    if (sheet.sends.empty())
        flow.paragraph(sheet_text("no sends"));
    else
        draw_table(flow, sends_table(sheet));
    if (!sheet.mix->loudspeakers.empty() || is_set(*sheet.mix)) {
        flow.heading(sheet_text("Starting equaliser"), kTallFaders);
        draw_faders(flow, flow.take(kTallFaders), *sheet.mix, risk);
    }
    draw_list(flow, sheet_text("Most likely to ring through this mix"), ring_out);
    draw_list(flow, sheet_text("Found at the soundcheck"), lines_to_write());
}

}  // namespace howlmap::app
