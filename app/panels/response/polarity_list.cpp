// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/response/polarity_list.h"

#include <QHeaderView>
#include <QPointer>
#include <cmath>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/panels/response/mix_edits.h"
#include "app/settings/figures.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

constexpr int kSettleMs = 500;
enum Column { kName, kCounted, kDrawn, kRing };
constexpr double kWorthHavingDb = 1.0;
constexpr double kSameRingOctaves = 1.0 / 24.0;

std::optional<double> gained(std::optional<double> after, std::optional<double> before) {
    return after && before ? std::optional(*after - *before) : std::nullopt;
}

std::optional<double> first_hz(const AnalysisResult& result) {
    return result.rings.empty() ? std::nullopt : std::optional(result.rings.front().hz);
}

PolarityList::Effect effect_of(const Show& show, const std::string& id, const AnalysisResult& before, const Job& job) {
    Show flipped = show;
    flip_polarity(flipped, id);
    AnalysisOptions options;
    options.listening = false;
    const auto after = analyse(flipped, options, {job.stop, {}});
    if (!after) return {};
    return {gained(after->margin_db, before.margin_db), gained(count_on(*after), count_on(before)), first_hz(before),
            first_hz(*after)};
}

QString effect_text(std::optional<double> db) { return db ? gain_text(*db) : QStringLiteral("–"); }

struct PolarityRow {
    QString name, id;
    bool inverted = false;
};

std::vector<PolarityRow> rows_of(const Show& show) {
    std::vector<PolarityRow> rows;
    for (const Input& input : show.inputs)
        if (!is_line(input))
            rows.push_back({PolarityList::tr("Input %1 %2").arg(input.channel).arg(qstr(input.name)), qstr(input.id),
                            input.polarity == Polarity::inverted});
    for (const Mix& mix : show.mixes)
        rows.push_back({PolarityList::tr("Mix %1 %2").arg(mix.number).arg(qstr(mix.name)), qstr(mix.id),
                        mix.polarity == Polarity::inverted});
    return rows;
}

/// Whether a list shows these rows, whatever its figures say.
bool shows(const QTreeWidget& list, const std::vector<PolarityRow>& rows) {
    if (list.topLevelItemCount() != static_cast<int>(rows.size())) return false;
    for (int i = 0; i < list.topLevelItemCount(); ++i) {
        const QTreeWidgetItem& item = *list.topLevelItem(i);
        const PolarityRow& row = rows[static_cast<std::size_t>(i)];
        if (item.text(kName) != row.name || item.data(kName, Qt::UserRole).toString() != row.id ||
            (item.checkState(kName) == Qt::Checked) != row.inverted)
            return false;
    }
    return true;
}

}  // namespace

PolarityList::PolarityList(const Workspace& workspace, QWidget* parent) : QTreeWidget(parent), work_(workspace) {
    setObjectName(QStringLiteral("polarities"));
    setAccessibleName(tr("Polarity of inputs and mixes"));
    setHeaderLabels({tr("Inverted"), tr("Turning it over: to count on"), tr("as drawn"), tr("first ring")});
    setRootIsDecorated(false);
    setUniformRowHeights(true);
    setFrameShape(QFrame::NoFrame);
    header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    settle_.setSingleShot(true);
    settle_.setInterval(kSettleMs);
    connect(&settle_, &QTimer::timeout, this, &PolarityList::compute);
    connect(this, &QTreeWidget::itemChanged, this, [this](QTreeWidgetItem* item) { flip(item); });
    connect(&work_.document, &Document::changed, this, &PolarityList::invalidate);
    connect(&work_.document, &Document::replaced, this, &PolarityList::invalidate);
    connect(&work_.analysis, &AnalysisService::updated, this, [this] {
        if (work_.analysis.counted()) settle_.start();
    });
    fill();
}

QString PolarityList::words(const Effect& effect) {
    if (!effect.hz_before || !effect.hz_after) return QStringLiteral("–");
    const QString from = hz_text(*effect.hz_before), to = hz_text(*effect.hz_after);
    if (std::abs(std::log2(*effect.hz_after / *effect.hz_before)) < kSameRingOctaves)
        return tr("stays at %1").arg(from);
    const double gain = effect.counted_db.value_or(effect.drawn_db.value_or(0.0));
    return std::abs(gain) < kWorthHavingDb ? tr("only moves from %1 to %2").arg(from, to)
                                           : tr("from %1 to %2").arg(from, to);
}

void PolarityList::showEvent(QShowEvent* event) {
    QTreeWidget::showEvent(event);
    fill();
    settle_.start();
}

void PolarityList::invalidate() {
    worker_.cancel();
    if (isVisible()) fill();  // else when it is shown: an edit while it is out of sight costs nothing
}

/// While an object is dragged the rows stay as they are; only their figures wait for the analysis.
void PolarityList::fill() {
    filling_ = true;
    const std::vector<PolarityRow> rows = rows_of(work_.document.show());
    if (!shows(*this, rows)) {
        const QString current = currentItem() ? currentItem()->data(kName, Qt::UserRole).toString() : QString();
        clear();
        for (const PolarityRow& row : rows) {
            auto* item = new QTreeWidgetItem(this, {row.name});
            item->setData(kName, Qt::UserRole, row.id);
            item->setCheckState(kName, row.inverted ? Qt::Checked : Qt::Unchecked);
            item->setToolTip(kName, tr("Turns the polarity over; one step that can be undone."));
            if (current == row.id) setCurrentItem(item);
        }
    }
    for (int i = 0; i < topLevelItemCount(); ++i)
        for (const int column : {kCounted, kDrawn, kRing}) topLevelItem(i)->setText(column, QStringLiteral("…"));
    filling_ = false;
}

void PolarityList::compute() {
    const auto before = work_.analysis.result();
    if (!isVisible() || !before || !work_.analysis.counted() || computed_for_ == work_.document.revision()) return;
    QStringList ids;
    for (int i = 0; i < topLevelItemCount(); ++i) ids.append(topLevelItem(i)->data(kName, Qt::UserRole).toString());
    worker_.restart([this, ids, before, show = work_.document.show(),
                     revision = work_.document.revision()](const Job& job) -> Worker::Deliver {
        for (const QString& id : ids) {
            const Effect effect = effect_of(show, id.toStdString(), *before, job);
            if (job.cancelled()) return {};
            // One row after the other: the first answers are there long before the last.
            worker_.tell([this, id, effect, revision] {
                if (revision == work_.document.revision()) show_effect(id, effect);
            });
        }
        return [this, revision] { computed_for_ = revision; };
    });
}

void PolarityList::show_effect(const QString& id, const Effect& effect) {
    filling_ = true;
    for (int i = 0; i < topLevelItemCount(); ++i) {
        QTreeWidgetItem* item = topLevelItem(i);
        if (item->data(kName, Qt::UserRole).toString() != id) continue;
        item->setText(kCounted, effect_text(effect.counted_db));
        item->setText(kDrawn, effect_text(effect.drawn_db));
        item->setText(kRing, words(effect));
        QFont bold = font();
        bold.setWeight(QFont::DemiBold);
        item->setFont(kCounted, bold);
    }
    filling_ = false;
}

void PolarityList::flip(QTreeWidgetItem* item) {
    if (filling_) return;
    const QString id = item->data(kName, Qt::UserRole).toString();
    const QString name = item->text(kName);
    // The list is filled again by the edit, which must not happen while the item is still telling of its change.
    QMetaObject::invokeMethod(
        this,
        [this, id, name] {
            work_.document.edit(tr("Turn polarity of %1").arg(name),
                                [&](Show& show) { flip_polarity(show, id.toStdString()); });
        },
        Qt::QueuedConnection);
}

}  // namespace howlmap::app
