// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_file_dialog.h"

#include <QCheckBox>
#include <QFileInfo>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

#include "app/settings/number_box.h"
#include "app/settings/preferences.h"

namespace howlmap::app {
namespace {

constexpr auto kGroup = "write_plan";
constexpr int kLeastPixels = 10, kUsualWidth = 1600, kUsualHeight = 1200;

QString ending_of(PlanFormat format) {
    switch (format) {
        case PlanFormat::png:
            return QStringLiteral("png");
        case PlanFormat::svg:
            return QStringLiteral("svg");
        case PlanFormat::pdf:
            break;
    }
    return QStringLiteral("pdf");
}

/// The kind that a filter like "PNG picture (*.png)" stands for.
PlanFormat format_of_filter(const QString& filter) {
    return plan_format_of(filter.chopped(filter.endsWith(QLatin1Char(')')) ? 1 : 0)).value_or(PlanFormat::pdf);
}

QSpinBox* pixel_box(const char* name, const QString& words) {
    auto* box = new QSpinBox;
    box->setObjectName(QString::fromLatin1(name));
    box->setAccessibleName(words);
    box->setToolTip(words);
    box->setRange(kLeastPixels, kMostPictureSide);
    return box;
}

}  // namespace

PlanFileDialog::PlanFileDialog(const QString& name, QWidget* parent) : QFileDialog(parent, tr("Write the plan")) {
    setObjectName(QStringLiteral("plan_file_dialog"));
    setOption(QFileDialog::DontUseNativeDialog);  // another one has no room for what stands below the name
    setAcceptMode(QFileDialog::AcceptSave);
    setFileMode(QFileDialog::AnyFile);
    const QStringList filters{tr("PDF (*.pdf)"), tr("SVG drawing (*.svg)"), tr("PNG picture (*.png)")};
    setNameFilters(filters);
    QWidget* options = build_options();
    recall();
    for (const QString& filter : filters)
        if (filter.contains(defaultSuffix())) selectNameFilter(filter);
    selectFile(name + QLatin1Char('.') + defaultSuffix());
    if (auto* grid = qobject_cast<QGridLayout*>(layout()))
        grid->addWidget(options, grid->rowCount(), 0, 1, grid->columnCount());
    connect(this, &QFileDialog::filterSelected, this, &PlanFileDialog::follow_filter);
    if (const auto* edit = findChild<QLineEdit*>())
        connect(edit, &QLineEdit::textChanged, this, &PlanFileDialog::refresh);
    refresh();
}

QWidget* PlanFileDialog::build_options() {
    auto* row = new QWidget(this);
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    dpi_ = new NumberBox;
    dpi_->setObjectName(QStringLiteral("plan_dpi"));
    dpi_->setDecimals(0);
    dpi_->setRange(kLeastDpi, kMostDpi);
    dpi_->setSingleStep(50.0);
    dpi_->setSuffix(tr(" dpi"));
    dpi_->setAccessibleName(tr("Resolution of the picture"));
    dpi_->setToolTip(tr("Dots an inch of a PNG: how fine it is, and how wide its lines are."));
    sized_ = new QCheckBox(tr("Si&ze in pixels"));
    sized_->setObjectName(QStringLiteral("plan_sized"));
    sized_->setToolTip(tr("A PNG of just this size; else it is one page at its resolution."));
    width_ = pixel_box("plan_width", tr("Width in pixels"));
    height_ = pixel_box("plan_height", tr("Height in pixels"));
    transparent_ = new QCheckBox(tr("No pa&per behind the plan"));
    transparent_->setObjectName(QStringLiteral("plan_transparent"));
    transparent_->setToolTip(tr("SVG and PNG without a background, to be laid over something else."));
    size_ = new QWidget;
    auto* size = new QHBoxLayout(size_);
    size->setContentsMargins(0, 0, 0, 0);
    size->addWidget(width_);
    size->addWidget(new QLabel(QStringLiteral("\u00d7")));
    size->addWidget(height_);
    for (QWidget* widget :
         {static_cast<QWidget*>(dpi_), static_cast<QWidget*>(sized_), size_, static_cast<QWidget*>(transparent_)})
        line->addWidget(widget);
    line->addStretch(1);
    connect(sized_, &QCheckBox::toggled, this, &PlanFileDialog::refresh);
    return row;
}

PlanFormat PlanFileDialog::format() const {
    return plan_format_of(file_name()).value_or(format_of_filter(selectedNameFilter()));
}

PlanFile PlanFileDialog::wish() const {
    PlanFile file;
    file.format = format();
    file.dpi = dpi_->value();
    file.transparent = transparent_->isChecked();
    if (sized_->isChecked()) file.size = QSize(width_->value(), height_->value());
    return file;
}

/// Another kind of file takes its own ending.
void PlanFileDialog::follow_filter(const QString& filter) {
    setDefaultSuffix(ending_of(format_of_filter(filter)));
    const QFileInfo named(file_name());
    if (plan_format_of(named.fileName())) selectFile(named.completeBaseName() + QLatin1Char('.') + defaultSuffix());
    refresh();
}

/// Only what means something for the kind of file can be set.
void PlanFileDialog::refresh() {
    const bool png = format() == PlanFormat::png;
    dpi_->setEnabled(png);
    sized_->setEnabled(png);
    size_->setEnabled(png && sized_->isChecked());
    transparent_->setEnabled(format() != PlanFormat::pdf);
}

void PlanFileDialog::recall() {
    const auto kept = settings();
    kept->beginGroup(QLatin1StringView(kGroup));
    const PlanFile usual;
    setDefaultSuffix(kept->value(QLatin1StringView("kind"), ending_of(usual.format)).toString());
    dpi_->setValue(kept->value(QLatin1StringView("dpi"), usual.dpi).toDouble());
    sized_->setChecked(kept->value(QLatin1StringView("sized"), false).toBool());
    width_->setValue(kept->value(QLatin1StringView("width"), kUsualWidth).toInt());
    height_->setValue(kept->value(QLatin1StringView("height"), kUsualHeight).toInt());
    transparent_->setChecked(kept->value(QLatin1StringView("transparent"), usual.transparent).toBool());
}

void PlanFileDialog::remember() const {
    const auto kept = settings();
    kept->beginGroup(QLatin1StringView(kGroup));
    kept->setValue(QLatin1StringView("kind"), ending_of(format()));
    kept->setValue(QLatin1StringView("dpi"), dpi_->value());
    kept->setValue(QLatin1StringView("sized"), sized_->isChecked());
    kept->setValue(QLatin1StringView("width"), width_->value());
    kept->setValue(QLatin1StringView("height"), height_->value());
    kept->setValue(QLatin1StringView("transparent"), transparent_->isChecked());
}

void PlanFileDialog::accept() {
    QFileDialog::accept();
    if (result() == QDialog::Accepted) remember();
}

}  // namespace howlmap::app
