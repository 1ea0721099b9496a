// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/preferences_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QSpinBox>

#include "app/settings/theme.h"

namespace howlmap::app {
namespace {

QComboBox* choice(const QStringList& texts, int current, const QString& name, const QString& tip) {
    auto* box = new QComboBox;
    box->addItems(texts);
    box->setCurrentIndex(current);
    box->setAccessibleName(name);
    box->setToolTip(tip);
    return box;
}

}  // namespace

PreferencesDialog::PreferencesDialog(QWidget* parent) : QDialog(parent), before_(Preferences::load()) {
    setWindowTitle(tr("Preferences"));
    look_ = choice({tr("As the desktop"), tr("Light: ink on paper"), tr("Dark: chalk on slate")},
                   static_cast<int>(before_.look), tr("Look"), tr("Prints are always ink on paper."));
    units_ = choice({tr("As the language says"), tr("Metres"), tr("Feet and inches")},
                    static_cast<int>(before_.new_show_units), tr("Units of new shows"),
                    tr("A show keeps its own units; change them in the Inspector."));
    rest_ = new QSpinBox;
    rest_->setRange(1, 60);
    rest_->setSuffix(tr(" s"));
    rest_->setValue(before_.autosave_rest_s);
    rest_->setAccessibleName(tr("Keep a copy aside after"));
    rest_->setToolTip(
        tr("How long the hands must rest before unsaved changes are copied aside. Your own file is never touched."));

    auto* form = new QFormLayout(this);
    form->addRow(tr("&Look"), look_);
    form->addRow(tr("&Units of new shows"), units_);
    form->addRow(tr("Keep a &copy aside after"), rest_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &PreferencesDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &PreferencesDialog::reject);
    connect(look_, &QComboBox::currentIndexChanged, this, [](int index) { apply_look(static_cast<Look>(index)); });
}

Preferences PreferencesDialog::chosen() const {
    return {static_cast<Look>(look_->currentIndex()), static_cast<UnitChoice>(units_->currentIndex()), rest_->value()};
}

void PreferencesDialog::accept() {
    chosen().save();
    QDialog::accept();
}

void PreferencesDialog::reject() {
    apply_look(before_.look);
    QDialog::reject();
}

}  // namespace howlmap::app
