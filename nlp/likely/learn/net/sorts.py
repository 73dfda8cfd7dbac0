"""What the net tells apart: the sorts of entries with their attributes and fields, and the questions."""
SORTS = ['amend', 'arrival', 'bought', 'finding', 'fit off', 'fit on', 'fit temporary', 'fit tight', 'fit tried', 'hands', 'hours', 'job', 'order', 'out', 'quote', 'reading',
         'recheck', 'remark', 'rule', 'stow', 'wait', 'want', 'weather', 'work']
VERDICTS = ['good', 'reuse', 'watch', 'repair', 'replace']
SKIES = ['rain', 'dry', 'frost', 'wind', 'hot', 'snow']
# What a figure measures where nothing in the note need say it, and the units that a bare figure may be in (`thou`: thousandths of an inch).
MEASURED = ['torque', 'pressure', 'diameter', 'length', 'running time', 'gap', 'clearance', 'bore', 'thickness', 'voltage', 'compression', 'temperature', 'runout', 'end play', 'end float', 'backlash',
            'speed', 'width', 'height', 'wear', 'resistance', 'current', 'play', 'depth']
UNITS = ['in', 'thou', 'mm', 'lb-ft', 'N·m', 'psi', 'bar', 'V', 'count', 'h', 'rpm']
ATTRIBUTES = [*VERDICTS, 'asWas', 'begun', *SKIES, 'total']
ASKS = 'blocked buy next where wasHow provisional due history spent timeSpent finish cheapest forecast sum picture'.split()
# The questions that are about something, and 'what': what of a part as it was is asked.
ASKED = [*(a for a in ASKS if a not in ('next', 'due', 'forecast', 'sum')), 'what']
# The field that names what an entry of a kind is about.
NAMES = {'fit': 'part', 'finding': 'part', 'reading': 'part', 'work': 'part', 'job': 'part', 'want': 'item', 'order': 'item', 'bought': 'item', 'quote': 'item', 'arrival': 'item',
         'recheck': 'part', 'stow': 'part', 'out': 'part', 'wait': 'part', 'hours': 'part'}
# What else an entry of a kind says: in its words (those of deeds in their base form), or as a figure or a day.
FIELDS = ['fit with', 'finding condition', 'reading what', 'reading value', 'work action', 'work product', 'job do', 'want spec', 'want qty', 'want for', 'order source', 'order price', 'order shipping',
          'order expected', 'bought source', 'bought price', 'quote source', 'quote price', 'quote shipping', 'rule first', 'rule then', 'recheck do', 'recheck after', 'recheck due', 'stow where',
          'out where', 'out until', 'out do', 'wait until', 'wait after', 'hours hours', 'hands when', 'hands for', 'weather from', 'weather to', 'amend value']


def sort_of(entry):
    return f"fit {entry.get('state', '')}" if entry['kind'] == 'fit' else entry['kind']
