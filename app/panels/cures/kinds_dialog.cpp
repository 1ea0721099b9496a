// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/cures/kinds_dialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/panels/cures/cure_text.h"
#include "app/settings/number_box.h"

namespace howlmap::app {

KindsDialog::KindsDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Kinds of cure"));
    auto* words = new QLabel(
        tr("Take away what cannot be had here, say in-ears that nobody owns. Trouble is what a cure costs you besides "
           "tone: 1 is as bad as 1 dB of tone. The ranking and the plan follow."));
    words->setWordWrap(true);
    auto* column = new QVBoxLayout(this);
    column->addWidget(words);
    column->addWidget(build_rows());
    auto* buttons =
        new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel | QDialogButtonBox::RestoreDefaults, this);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &KindsDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &KindsDialog::reject);
    connect(buttons->button(QDialogButtonBox::RestoreDefaults), &QPushButton::clicked, this,
            [this] { show_choices({}); });
    show_choices(CureChoices::load());
}

QWidget* KindsDialog::build_rows() {
    auto* box = new QWidget(this);  // a child from the start: Tab goes in the order of making
    auto* grid = new QGridLayout(box);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->addWidget(new QLabel(tr("Trouble")), 0, 1);
    for (const CureKind kind : all_cure_kinds()) add_row(*grid, kind);
    grid->setColumnStretch(0, 1);
    return box;
}

void KindsDialog::add_row(QGridLayout& grid, CureKind kind) {
    const QString name = kind_text(kind);
    QWidget* box = grid.parentWidget();
    const Row row{kind, new QCheckBox(name, box), new NumberBox(box)};
    row.offered->setObjectName(QStringLiteral("offer_") + QLatin1StringView(to_string(kind)));
    row.trouble->setObjectName(QStringLiteral("trouble_") + QLatin1StringView(to_string(kind)));
    row.trouble->setRange(0.0, CureChoices::kMostTrouble);
    row.trouble->setSingleStep(0.1);
    row.trouble->setDecimals(2);
    row.trouble->setAccessibleName(tr("Trouble of: %1").arg(name));
    connect(row.offered, &QCheckBox::toggled, row.trouble, &QWidget::setEnabled);
    const int line = grid.rowCount();
    grid.addWidget(row.offered, line, 0);
    grid.addWidget(row.trouble, line, 1);
    rows_.push_back(row);
}

void KindsDialog::show_choices(const CureChoices& choices) {
    for (const Row& row : rows_) {
        row.offered->setChecked(!choices.ruled_out.contains(row.kind));
        row.trouble->setEnabled(row.offered->isChecked());
        row.trouble->setValue(choices.weights.of(row.kind));
    }
}

CureChoices KindsDialog::chosen() const {
    CureChoices choices;
    for (const Row& row : rows_) {
        choices.weights.set(row.kind, row.trouble->value());
        if (!row.offered->isChecked()) choices.ruled_out.insert(row.kind);
    }
    return choices;
}

void KindsDialog::accept() {
    chosen().save();
    QDialog::accept();
}

}  // namespace howlmap::app
