// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/tables.h"

#include "app/panels/inspector/band_tables.h"
#include "app/panels/inspector/field_builder.h"
#include "core/show/edits.h"

namespace howlmap::app {
namespace {

QString t(const char* text) { return inspector_text(text); }

const QList<NumberColumn>& filter_columns() {
    static const QList<NumberColumn> columns{
        {t("Hz"), limits::kHz, 500.0}, {t("Q"), limits::kQ, 4.0}, {t("dB"), limits::kGain, -3.0}};
    return columns;
}

template <class Find>
NumberTableSource filters(const char* title, const char* step, Find find) {
    NumberTableSource source;
    source.title = t(title);
    source.step_name = t(step);
    source.columns = filter_columns();
    source.get = [find](const Show& show) -> std::optional<NumberRows> {
        const std::vector<PeakFilter>* list = find(const_cast<Show&>(show));
        if (!list) return std::nullopt;
        return rows_of(*list, [](const PeakFilter& f) { return NumberRow{f.hz, f.q, f.gain_db}; });
    };
    source.set = [find](Show& show, const NumberRows& rows) {
        if (auto* list = find(show))
            assign_rows(*list, rows, [](PeakFilter& f, const NumberRow& row) {
                f.hz = row[0];
                f.q = row[1];
                f.gain_db = row[2];
            });
        return QString();
    };
    return source;
}

template <class Find>
NumberTableSource response_points(Find find) {
    NumberTableSource source;
    source.title = t("Response table");
    source.step_name = t("Set response table");
    source.columns = {{t("Hz"), limits::kHz, 100.0}, {t("dB"), limits::kGain, 0.0}};
    source.most_rows = 512;
    source.get = [find](const Show& show) -> std::optional<NumberRows> {
        const Response* response = find(const_cast<Show&>(show));
        if (!response) return std::nullopt;
        return rows_of(response->table, [](const ResponsePoint& point) { return NumberRow{point.hz, point.db}; });
    };
    source.set = [find](Show& show, const NumberRows& rows) {
        for (std::size_t i = 1; i < rows.size(); ++i)
            if (rows[i][0] <= rows[i - 1][0]) return t("row %1: expected a frequency above the one before").arg(i + 1);
        if (Response* response = find(show))
            assign_rows(response->table, rows, [](ResponsePoint& point, const NumberRow& row) {
                point.hz = row[0];
                point.db = row[1];
            });
        return QString();
    };
    return source;
}

NumberTableSource body_modes(const std::string& id) {
    const auto find = [id](Show& show) -> std::vector<BodyMode>* {
        Input* input = find_by_id(show.inputs, id);
        Pickup* pickup = input ? std::get_if<Pickup>(&input->transducer) : nullptr;
        return pickup ? &pickup->modes : nullptr;
    };
    NumberTableSource source;
    source.title = t("Body modes");
    source.step_name = t("Set body modes");
    source.columns = {{t("Hz"), limits::kHz, 200.0},
                      {t("Q"), limits::kQ, 20.0},
                      {t("dB"), limits::kGain, 0.0},
                      {t("Air, 0 or 1"), {0.0, 1.0}, 0.0}};
    source.name_title = t("Name");
    source.get = [find](const Show& show) -> std::optional<NumberRows> {
        const auto* modes = find(const_cast<Show&>(show));
        if (!modes) return std::nullopt;
        return rows_of(*modes, [](const BodyMode& mode) {
            NumberRow row{mode.hz, mode.q, mode.gain_db, mode.air ? 1.0 : 0.0};
            row.name = QString::fromStdString(mode.name);
            return row;
        });
    };
    source.set = [find](Show& show, const NumberRows& rows) {
        if (auto* modes = find(show))
            assign_rows(*modes, rows, [](BodyMode& mode, const NumberRow& row) {
                mode.hz = row[0];
                mode.q = row[1];
                mode.gain_db = row[2];
                mode.air = row[3] >= 0.5;
                mode.name = row.name.toStdString();
            });
        return QString();
    };
    return source;
}

NumberTableSource corners(const std::string& id, const char* title) {
    NumberTableSource source;
    source.title = t(title);
    source.step_name = t("Set corners");
    source.columns = {{t("Stage left"), limits::kPosition, 0.0, true}, {t("Upstage"), limits::kPosition, 0.0, true}};
    source.most_rows = limits::kCornersMost;
    source.get = [id](const Show& show) -> std::optional<NumberRows> {
        const Outline* outline = outline_of(show, id);
        if (!outline) return std::nullopt;
        NumberRows rows;
        for (const Vec2& corner : *outline) rows.push_back({corner.x, corner.y});
        return rows;
    };
    source.set = [id](Show& show, const NumberRows& rows) {
        Outline corners;
        for (const auto& row : rows) corners.push_back({row[0], row[1]});
        if (corners.size() < limits::kCornersLeast || !is_simple(corners))
            return t("expected three corners or more whose edges do not cross");
        if (const auto riser = placed_object(show, id); riser && riser->locked)
            return t("It is locked: unlock it to change its corners.");
        if (Outline* outline = outline_of(show, id)) *outline = corners;
        return QString();
    };
    return source;
}

void add_show_tables(QList<NumberTableSource>& tables) {
    tables.append(corners({}, "Stage corners"));
    tables.append(absorption_table("Floor by octaves", [](Show& show) { return &show.stage.surfaces.floor; }));
    const auto add = [&](const char* title, std::optional<Surface> Surfaces::*surface) {
        tables.append(absorption_table(title, [surface](Show& show) {
            auto& plane = show.stage.surfaces.*surface;
            return plane ? &*plane : nullptr;
        }));
    };
    add("Back wall by octaves", &Surfaces::back);
    add("Front wall by octaves", &Surfaces::front);
    add("Left wall by octaves", &Surfaces::left);
    add("Right wall by octaves", &Surfaces::right);
    add("Ceiling by octaves", &Surfaces::ceiling);
}

}  // namespace

QList<NumberTableSource> tables_of(const Show& show, const QString& name) {
    const std::string id = name.toStdString();
    QList<NumberTableSource> tables;
    if (id.empty()) add_show_tables(tables);
    if (find_by_id(show.loudspeakers, id))
        tables.append(response_points([id](Show& s) -> Response* {
            Loudspeaker* speaker = find_by_id(s.loudspeakers, id);
            return speaker ? &speaker->response : nullptr;
        }));
    if (find_by_id(show.inputs, id)) {
        tables.append(body_modes(id));
        tables.append(spectrum_table([id](Show& s) -> Spectrum* {
            Input* input = find_by_id(s.inputs, id);
            return input ? &input->spectrum : nullptr;
        }));
        tables.append(response_points([id](Show& s) -> Response* {
            Input* input = find_by_id(s.inputs, id);
            Microphone* microphone = input ? std::get_if<Microphone>(&input->transducer) : nullptr;
            return microphone ? &microphone->response : nullptr;
        }));
        tables.append(filters("Equaliser", "Set equaliser", [id](Show& s) -> std::vector<PeakFilter>* {
            Input* input = find_by_id(s.inputs, id);
            return input ? &input->equaliser : nullptr;
        }));
    }
    if (find_by_id(show.backline, id))
        tables.append(spectrum_table([id](Show& s) -> Spectrum* {
            Backline* item = find_by_id(s.backline, id);
            return item ? &item->spectrum : nullptr;
        }));
    if (find_by_id(show.mixes, id))
        tables.append(filters("Notches", "Set notches", [id](Show& s) -> std::vector<PeakFilter>* {
            Mix* mix = find_by_id(s.mixes, id);
            return mix ? &mix->notches : nullptr;
        }));
    if (find_by_id(show.stage.risers, id)) tables.append(corners(id, "Riser corners"));
    return tables;
}

}  // namespace howlmap::app
